using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Library;

namespace Progression.App.Intake;

/// <summary>The regimens to choose from, and what the one under the cursor states and leaves open.</summary>
internal static class RegimenPage
{
    private const int Narrowest = 78;
    private const int MarkWidth = 8;

    public static Picture Draw(IntakeState state, PictureSize room)
    {
        ImmutableArray<Regimen> all = IntakeFlow.Regimens(state);
        int shown = Math.Min(all.Length, room.Height / 2);
        int first = Paging.First(state.Index, shown, all.Length);
        IEnumerable<PictureRow> list = all.Skip(first).Take(shown).Select((one, at) => PictureRow.Of(
            TextFit.Exactly(SafeText.OneLine($"{Mark(state, one),-MarkWidth}{one.Title} ({one.Id})"), room.Width), first + at == state.Index ? Ink.Chosen : Ink.Plain));
        PictureSize below = room with { Height = room.Height - shown - 1 };
        return new([.. list, TextLines.Rule(room.Width), .. ScrolledText.Of([.. Details(state, room.Width)], state.Scroll, below).Rows], new CaretAt(0, state.Index - first));
    }

    public static IEnumerable<PictureRow> Details(IntakeState state, int width = Narrowest)
    {
        Regimen one = IntakeFlow.Regimens(state)[state.Index];
        ImmutableArray<string> open = PlanDraft.LeftOpen(one);
        IEnumerable<(string Label, string Text)> told =
        [
            open.IsEmpty ? ("Can be planned", "it states contractions, sessions a day and days a week")
                : ("Cannot be planned", $"its publication leaves open {string.Join(", ", open)}; nothing is filled in for it"),
            ("Who", one.Population),
            ("Contractions", $"{one.Contractions} a session, {one.SessionsPerDay} a day, {one.DaysPerWeek} days a week, {one.Weeks} weeks"),
            ("On and off", $"{one.On}, {one.Off}; rise {one.RampUp}, fall {one.RampDown}"),
            ("Current", $"{one.Rate}, width {one.Width}, shape {Shape(one)}"),
            ("Pads", $"{one.Pad}; {one.Position}"),
            ("Intensity", $"{one.Intensity}"),
            ("Outcome", one.Outcome),
            ("Remark", one.Note ?? ""),
            ("Source", $"{one.Source}"),
        ];
        return told.Where(line => line.Text.Length > 0).SelectMany(line => TextLines.Labelled(line.Label, SafeText.OneLine(line.Text), width));
    }

    // "BurstTriangle (derived)" is told as "burst triangle (derived)".
    private static string Shape(Regimen one) => string.Concat($"{one.Waveform}".Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}")).Trim();

    private static string Mark(IntakeState state, Regimen one) => one.Id == state.Desk.Library.DefaultRegimen ? "usual" : PlanDraft.LeftOpen(one).IsEmpty ? "" : "open";
}
