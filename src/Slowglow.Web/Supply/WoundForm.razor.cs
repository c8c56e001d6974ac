using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Power.Rewinding;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Web.Supply;

/// <summary>The form on which a wound part is checked against its specification.</summary>
public sealed partial class WoundForm
{
    private IReadOnlyList<WoundCheckRow> rows = [];
    private FlashCheck[] flash = [];
    private string[] typed = [];
    private string[] flashTyped = [];
    private IReadOnlyList<Finding> wrong = [];
    private bool noted;

    [Parameter, EditorRequired]
    public RewindAnswer Answer { get; set; } = null!;

    /// <summary>Of the job that the check is noted on.</summary>
    [Parameter, EditorRequired]
    public int Number { get; set; }

    [Inject]
    private WriteNote WriteNote { get; set; } = null!;

    private int Entered => rows.Count(r => r.Passes is not null) + flash.Count(f => f.Passes is not null);

    private int Failed => rows.Count(r => r.Passes == false) + flash.Count(f => f.Passes == false);

    private string Summary =>
        Entered == 0 ? "Nothing entered yet."
        : Failed > 0 ? $"{Failed} of {Entered} entered fail."
        : Entered < rows.Count + flash.Length ? $"All {Entered} entered pass; {rows.Count + flash.Length - Entered} to go."
        : "Everything passes.";

    protected override void OnInitialized()
    {
        rows = WoundCheck.Of(Answer.Design);
        typed = [.. rows.Select(_ => "")];
        flash = [.. Answer.Tests.Select(t => new FlashCheck(t, double.NaN, null))];
        flashTyped = [.. flash.Select(_ => "")];
    }

    private void Enter(int index, string? text)
    {
        typed[index] = text?.Trim() ?? "";
        noted = false;
        var lines = rows.Zip(typed).Where(r => r.Second.Length > 0).Select(r => $"{r.First.Line} = {r.Second}").ToArray();
        var read = RewindTransformer.Check(Answer, lines);
        wrong = read.Findings;
        rows = read.Value ?? rows;
    }

    private void Apply(int index, string? text)
    {
        flashTyped[index] = text?.Trim() ?? "";
        noted = false;
        var read = QuantityText.TryRead(flashTyped[index], Unit.Volt, out var volts) && volts.Value > 0;
        flash[index] = flash[index] with { AppliedVolts = read ? volts.Value : double.NaN };
        wrong =
            read || flashTyped[index].Length == 0
                ? []
                :
                [
                    new(
                        Severity.Error,
                        Place.None,
                        $"\"{flashTyped[index]}\" is no test voltage.",
                        "Write volts rms: 4000, 1.5 kV."
                    ),
                ];
    }

    private void Went(int index, ChangeEventArgs change)
    {
        noted = false;
        flash[index] = flash[index] with
        {
            Held = change.Value?.ToString() switch
            {
                "held" => true,
                "broke" => false,
                _ => null,
            },
        };
    }

    private async Task NoteAsync()
    {
        var measured = rows.Where(r => r.Passes is not null)
            .Select(r => $"{r.What} {Engineering.Format(r.Measured, r.Unit)} {(r.Passes == true ? "passes" : "fails")}");
        var tested = flash
            .Where(f => f.Passes is not null)
            .Select(f => $"flash test {f.Test.Between} at {Volts(f.AppliedVolts)} {f.Word}");
        var note =
            $"Check of the wound {Answer.Part} on {Answer.Design.Core}: {string.Join("; ", measured.Concat(tested))}. {Summary}";
        wrong = await WriteNote.RunAsync(Number, note);
        noted = wrong.Count == 0;
    }

    private static string Volts(double volts) =>
        double.IsNaN(volts) ? "volts not entered" : volts.ToString("0", CultureInfo.InvariantCulture) + " V";
}
