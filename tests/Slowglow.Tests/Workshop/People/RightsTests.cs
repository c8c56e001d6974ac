using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Tests.Workshop.People;

/// <summary>Who may do what: the shop's own rule, no source.</summary>
public sealed class RightsTests
{
    [Theory]
    [InlineData(Role.Owner, true, true, true, true)]
    [InlineData(Role.Counter, true, true, false, false)]
    [InlineData(Role.Bench, false, false, false, false)]
    public void Roles_have_their_rights(Role role, bool invoices, bool money, bool back, bool settings) =>
        Assert.Equal(
            [invoices, money, back, settings],
            new[] { Right.IssueInvoices, Right.TakeMoney, Right.GiveMoneyBack, Right.ChangeSettings }.Select(r =>
                Rights.May(role, r)
            )
        );

    [Fact]
    public void Papers_and_money_take_a_right_and_the_bench_does_not()
    {
        var amount = new Amount(1, "EUR");
        Assert.Equal(Right.IssueInvoices, Rights.For(new PaperIssued { What = new(PaperKind.Invoice, 1, amount, null) }));
        Assert.Equal(Right.GiveMoneyBack, Rights.For(new PaperIssued { What = new(PaperKind.CreditNote, 1, amount, 1) }));
        Assert.Null(Rights.For(new NoteWritten { Text = "hums" }));
        Assert.Null(Rights.For(new ReadingTaken { Line = "HT1 = 300 V", Setup = "bench" }));
    }

    [Fact]
    public void An_owner_has_to_keep_the_keys()
    {
        var rules = ExampleRules.Rules;
        Assert.Empty(RulesCheck.Look(rules with { People = [new("Ada", Role.Owner, "h"), new("Bea", Role.Bench)] }));
        Assert.Single(RulesCheck.Look(rules with { People = [new("Ada", Role.Owner), new("Bea", Role.Bench, "h")] }));
        Assert.Single(RulesCheck.Look(rules with { People = [new("Ada", Role.Owner), new("ada", Role.Bench)] }));
        Assert.True((rules with { People = [new("Ada", Role.Owner, "h")] }).AsksForPin);
        Assert.False((rules with { People = [new("Ada", Role.Owner)] }).AsksForPin);
    }

    [Fact]
    public void Names_alone_of_an_older_shop_come_back_as_owners_without_a_pin()
    {
        var read = System.Text.Json.JsonSerializer.Deserialize<List<Person>>(
            """["Ada", {"Name":"Bea","Role":"Counter","Pin":"h"}]"""
        )!;
        Assert.Equal([new Person("Ada", Role.Owner), new Person("Bea", Role.Counter, "h")], read);
        Assert.Equal(
            read,
            System.Text.Json.JsonSerializer.Deserialize<List<Person>>(System.Text.Json.JsonSerializer.Serialize(read))
        );
    }
}
