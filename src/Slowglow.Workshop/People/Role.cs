namespace Slowglow.Workshop.People;

/// <summary>What somebody does in the shop.</summary>
public enum Role
{
    /// <summary>Everything: settings, people, credit notes too.</summary>
    Owner,

    /// <summary>Customers, quotes, invoices, money.</summary>
    Counter,

    /// <summary>Repairs: readings, parts, hours, tests, reports, quotes.</summary>
    Bench,
}
