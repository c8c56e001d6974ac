namespace Slowglow.Workshop.People;

/// <summary>What not everybody may do once PINs are asked for.</summary>
public enum Right
{
    IssueInvoices,
    TakeMoney,
    GiveMoneyBack,
    ChangeSettings,
}
