using Slowglow.Sheets.Parts;

namespace Slowglow.Sheets.Parsing;

/// <summary>Finds out which ends share a net, and what the net is called.</summary>
internal sealed class NetResolver(IReadOnlyList<PartPlan> plans, SheetContext context)
{
    private readonly Dictionary<string, PartPlan> byDesignator = plans.ToDictionary(p => p.Entry.Designator);

    /// <summary>Parent in a forest of names; words are roots of their own.</summary>
    private readonly Dictionary<string, string> parent = [];

    /// <summary>Every spelling used, to the canonical pin or word.</summary>
    private readonly Dictionary<string, string> spellings = [];
    private readonly List<string> mentioned = [];
    private readonly Dictionary<string, Place> places = [];
    private readonly HashSet<string> pinsMentioned = [];
    private readonly HashSet<string> partsMentioned = [];

    /// <summary>Resolves every end; ends that make no sense are reported and left unconnected.</summary>
    internal void Resolve()
    {
        foreach (var plan in plans)
        {
            foreach (var pin in plan.Pins.Where(p => p.End is not null))
            {
                if (Name(pin.End!.Value, plan.Entry.Designator) is { } target)
                {
                    Join(Key(plan, pin), target);
                }
            }
        }

        foreach (var plan in plans)
        {
            Loose(plan);
        }
    }

    /// <summary>Where a net is first named.</summary>
    internal Place PlaceOf(string net) => places.GetValueOrDefault(net);

    private static string Key(PartPlan plan, PinPlan pin) => $"{plan.Entry.Designator}.{pin.Number}";

    /// <summary>Canonical name of what a word names: a net word or PART.NUMBER; null after an error.</summary>
    private string? Name(Word word, string designator)
    {
        if (spellings.TryGetValue(word.Text, out var known))
        {
            pinsMentioned.Add(known);
            return known;
        }

        partsMentioned.Add(NetWord.PartOf(word.Text));
        var named = NetWord.Read(word, byDesignator, context, designator);
        if (named is null)
        {
            return null;
        }

        spellings[word.Text] = named;
        pinsMentioned.Add(named);
        mentioned.Add(word.Text);
        places[word.Text] = word.Place;
        return named;
    }

    private void Join(string pin, string target)
    {
        var (a, b) = (Root(pin), Root(target));
        if (a == b)
        {
            return;
        }

        // A word never hangs under a pin, so a tree's root is the word when it has one.
        var (above, below) = IsWord(a) ? (a, b) : (b, a);
        parent[below] = above;
    }

    private bool IsWord(string name) => NetWord.IsReserved(name) || !byDesignator.ContainsKey(NetWord.PartOf(name));

    private string Root(string name)
    {
        while (parent.TryGetValue(name, out var above))
        {
            name = above;
        }

        return name;
    }

    private void Loose(PartPlan plan)
    {
        var entry = plan.Entry;
        if (
            plan.Pins.Count == 0
            || plan.Pins.Any(p => p.End is not null || pinsMentioned.Contains(Key(plan, p)))
            || entry.HasEnds
            || partsMentioned.Contains(entry.Designator)
        )
        {
            return;
        }

        if (plan.Pins.Count == 2)
        {
            context.Findings.Error(
                entry.Place,
                $"{entry.Designator} does not say between which nets it stands",
                "write WHAT ratings A -> B",
                entry.Designator
            );
        }
        else
        {
            context.Findings.Warning(
                entry.Place,
                $"{entry.Designator} is connected to nothing",
                $"mention its pins at other parts, e.g. {entry.Designator}.{plan.Pins[0].Number}",
                entry.Designator
            );
        }
    }

    /// <summary>The table of nets, and every part's pins by designator.</summary>
    internal (NetTable Table, IReadOnlyDictionary<string, IReadOnlyList<Pin>> Pins) Table()
    {
        var names = new List<string>();
        var nameOfRoot = new Dictionary<string, string>();
        var canonical = new Dictionary<string, string>();
        foreach (var spelling in mentioned)
        {
            var root = Root(spellings[spelling]);
            if (!nameOfRoot.ContainsKey(root))
            {
                nameOfRoot[root] = IsWord(root) ? root : spelling;
                names.Add(nameOfRoot[root]);
            }

            canonical[spelling] = nameOfRoot[root];
        }

        var pins = new Dictionary<string, IReadOnlyList<Pin>>();
        foreach (var plan in plans)
        {
            IReadOnlyList<Pin> own = [.. plan.Pins.Select(p => PinOf(plan, p, names, nameOfRoot, canonical))];
            pins[plan.Entry.Designator] = own;
            if (own.Count == 2 && own[0].Net == own[1].Net)
            {
                context.Findings.Warning(
                    plan.Entry.Place,
                    $"{plan.Entry.Designator} has both ends on {own[0].Net}",
                    "name the other net",
                    plan.Entry.Designator
                );
            }
        }

        return (new NetTable(names, canonical), pins);
    }

    private Pin PinOf(
        PartPlan plan,
        PinPlan pin,
        List<string> names,
        Dictionary<string, string> nameOfRoot,
        Dictionary<string, string> canonical
    )
    {
        var key = Key(plan, pin);
        var root = Root(key);
        if (!nameOfRoot.TryGetValue(root, out var net))
        {
            net = root;
            nameOfRoot[root] = net;
            names.Add(net);
        }

        canonical.TryAdd(key, net);
        foreach (var electrode in PinSpellings.Of(plan.Pins, pin))
        {
            canonical.TryAdd($"{plan.Entry.Designator}.{electrode}", net);
        }

        return new Pin(pin.Number, pin.Electrode, net);
    }
}
