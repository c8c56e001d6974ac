using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.People;

/// <summary>Who may do what.</summary>
public static class Rights
{
    public static bool May(Role role, Right right) =>
        role switch
        {
            Role.Owner => true,
            Role.Counter => right is Right.IssueInvoices or Right.TakeMoney,
            _ => false,
        };

    /// <summary>The right that an entry takes; null when everybody who works here may write it.</summary>
    public static Right? For(TimelineEntry entry) =>
        entry switch
        {
            PaperIssued { What.Kind: PaperKind.CreditNote } or MoneyReturned => Right.GiveMoneyBack,
            PaperIssued => Right.IssueInvoices,
            MoneyTaken => Right.TakeMoney,
            _ => null,
        };

    public static string Say(Role role) =>
        role switch
        {
            Role.Owner => "owner",
            Role.Counter => "counter",
            _ => "bench",
        };

    public static string Say(Right right) =>
        right switch
        {
            Right.IssueInvoices => "issue invoices",
            Right.TakeMoney => "take money down",
            Right.GiveMoneyBack => "write credit notes or give money back",
            _ => "change the shop's settings",
        };

    /// <summary>"owner or counter".</summary>
    public static string Holders(Right right) =>
        string.Join(" or ", Enum.GetValues<Role>().Where(r => May(r, right)).Select(Say));
}
