using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Papers;

namespace Slowglow.Bench.Papers;

/// <summary>A customer as the head of a paper names them.</summary>
public static class CustomerParty
{
    public static Party Of(Customer customer) =>
        new(
            customer.Name,
            customer.Address,
            string.Join(", ", new[] { customer.Contact, customer.Mail }.Where(t => t.Length > 0)),
            ""
        );
}
