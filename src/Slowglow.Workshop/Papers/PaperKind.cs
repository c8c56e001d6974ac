namespace Slowglow.Workshop.Papers;

/// <summary>Papers with a number of their own. Each kind counts from 1 without gaps.</summary>
public enum PaperKind
{
    Invoice,
    CreditNote,
}
