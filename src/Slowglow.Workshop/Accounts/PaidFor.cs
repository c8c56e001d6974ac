namespace Slowglow.Workshop.Accounts;

public enum PaidFor
{
    BenchFee,
    Deposit,

    /// <summary>Part or all of what was invoiced.</summary>
    Repair,
}
