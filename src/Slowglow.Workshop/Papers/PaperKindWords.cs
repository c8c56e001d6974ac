namespace Slowglow.Workshop.Papers;

public static class PaperKindWords
{
    public static string Say(PaperKind kind) => kind == PaperKind.Invoice ? "invoice" : "credit note";
}
