namespace Slowglow.Solving;

public enum BranchKind
{
    /// <summary>current = g (u - e), slots: g, steady e, swinging e.</summary>
    Conductance,

    /// <summary>current = C du/dt, slot: C.</summary>
    Storage,

    /// <summary>u = r i + L di/dt, slots: r, L.</summary>
    Flow,
}
