namespace Slowglow.Workshop.Customers;

/// <summary>Whose unit it is.</summary>
public sealed class Customer
{
    /// <summary>Given by the database.</summary>
    public int Id { get; private set; }

    public required string Name { get; init; }

    /// <summary>Telephone, mail or address, as written on the card; empty when none was left.</summary>
    public string Contact { get; init; } = "";
}
