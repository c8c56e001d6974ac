namespace Slowglow.Workshop.Customers;

/// <summary>Whose unit it is.</summary>
public sealed class Customer
{
    /// <summary>Given by the database.</summary>
    public int Id { get; private set; }

    public required string Name { get; set; }

    /// <summary>Telephone, as written on the card; empty when none was left. On old cards also mail or an address.</summary>
    public string Contact { get; set; } = "";

    /// <summary>Empty when none was left.</summary>
    public string Mail { get; set; } = "";

    /// <summary>For the head of an invoice; lines; may be empty.</summary>
    public string Address { get; set; } = "";
}
