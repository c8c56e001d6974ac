namespace Slowglow.Circuits.Checks;

/// <summary>Nets joined step by step into groups.</summary>
internal sealed class NetGroups
{
    private readonly Dictionary<string, string> parent = [];

    public string Find(string net)
    {
        while (parent.TryGetValue(net, out var up) && up != net)
        {
            net = up;
        }

        return net;
    }

    public void Join(string a, string b) => parent[Find(a)] = Find(b);

    public bool Same(string a, string b) => Find(a) == Find(b);
}
