namespace Slowglow.Workshop.Jobs;

public static class WaitsForWords
{
    public static string Say(WaitsFor waits) =>
        waits switch
        {
            WaitsFor.Us => "waits for us",
            WaitsFor.Customer => "waits for the customer",
            WaitsFor.Parts => "waits for parts",
            WaitsFor.Collection => "waits to be collected",
            _ => "gone home",
        };

    public static WaitsFor Of(JobState state) =>
        state switch
        {
            JobState.AwaitingCustomer => WaitsFor.Customer,
            JobState.AwaitingParts => WaitsFor.Parts,
            JobState.ReadyToCollect => WaitsFor.Collection,
            JobState.HandedOver => WaitsFor.Nothing,
            _ => WaitsFor.Us,
        };
}
