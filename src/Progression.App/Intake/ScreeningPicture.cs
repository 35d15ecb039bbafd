using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>Lays out the screening: the questions group by group, below them what follows for stim, at the foot the question in full.</summary>
public static class ScreeningPicture
{
    private const int Narrowest = 80;
    private const int LeastBelow = 7;
    private const int AnswerWidth = 11;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(ScreeningState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = FormScreen.Inside(size);
        (Picture body, IEnumerable<PictureRow> foot) = state switch
        {
            { Mode: ScreeningMode.Help } => (FormScreen.Help(HelpLines(state), state.Scroll, size.Width), []),
            { Aside: { } aside } => (FormPicture.Draw(aside, room, line => new FormBeside(PictureRow.Of(" " + ScreeningFlow.Understood(state, line), Ink.Quiet))), FormScreen.Foot(aside.Problem, [ScreeningFlow.Allowed(state)], size.Width)),
            { Mode: ScreeningMode.Rest } => (List(state, room), FormScreen.Wrapped(RestQuestion(state), size.Width, Ink.Strong)),
            _ => (List(state, room), FormScreen.Wrapped(state.Chosen?.Question ?? "The library has no questions.", size.Width, Ink.Strong)),
        };
        return FormScreen.Draw(ScreeningScreen.Where(state), body, foot, (state.Status, ScreeningActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(ScreeningState state) =>
    [
        .. ScreeningActions.Table.HelpPage(state.HelpFor.ToString()),
        "Marks before a question",
        "  X                       bars stim: present, not known or not asked",
        "  ! i                     a precaution with a cap on the dose; one without",
        "  cleared                 a named clinician's word lifts it",
        "A contraindication that is not asked or not known bars stim as a yes does. The active part of a plan is drafted all the same.",
    ];

    /// <summary>What stands below the questions.</summary>
    internal static IReadOnlyList<PictureRow> Below(ScreeningState state, int width = Narrowest) =>
    [
        .. FormScreen.Wrapped(Consequence(state), width, state.Gate.Barred ? Ink.Stop : Ink.Strong),
        .. state.Chosen is { } item ? FormScreen.Wrapped($"{item.Where}. {item.Action}{Cap(item)} {Lifts(item)}", width, Ink.Plain) : [],
        .. state.Chosen is { } one && state.Answers.GetValueOrDefault(one.Id)?.Clearance is { } clearance
            ? FormScreen.Wrapped($"Cleared by {clearance.By} on {DayText.Written(clearance.On)}: {clearance.Text}", width, Ink.Note)
            : [],
        .. state.Gate.Findings.Where(finding => finding.Severity is Severity.Warning or Severity.Stop).SelectMany(finding => FormScreen.Wrapped(
            $"{(finding.Severity == Severity.Stop ? "X" : "!")} {finding.Text}", width, finding.Severity == Severity.Stop ? Ink.Stop : Ink.Warning)),
        .. state.Chosen is { } asked ? FormScreen.Wrapped($"Source: {asked.Source}", width, Ink.Quiet) : [],
    ];

    private static Picture List(ScreeningState state, PictureSize room)
    {
        List<PictureRow> rows = [];
        int current = 0;
        ImmutableArray<ScreeningItem> items = state.Items;
        for (int at = 0; at < items.Length; at++)
        {
            if (at == 0 || items[at].Kind != items[at - 1].Kind)
            {
                rows.Add(PictureRow.Of(Heading(items[at].Kind), Ink.Strong));
            }

            current = at == state.Index ? rows.Count : current;
            rows.Add(Row(state, items[at], room.Width, at == state.Index));
        }

        int below = Math.Max(LeastBelow, room.Height / 3);
        int shown = Math.Min(rows.Count, room.Height - below - 1);
        int first = Paging.First(current, shown, rows.Count, overlap: 1);
        Picture told = ScrolledText.Of(Below(state, room.Width), state.Scroll, room with { Height = room.Height - shown - 1 });
        return new([.. rows.Skip(first).Take(shown), TextLines.Rule(room.Width), .. told.Rows], new CaretAt(0, current - first));
    }

    private static PictureRow Row(ScreeningState state, ScreeningItem item, int width, bool isChosen)
    {
        ScreeningAnswer? given = state.Answers.GetValueOrDefault(item.Id);
        (string mark, Ink ink) = Mark(item, given);
        string answer = given is null ? "" : item.CanBeCleared && given.Clearance is not null ? "yes, clear" : YesNo.Word(given.Answer);
        string text = $"{TextFit.Exactly(answer, AnswerWidth)}{SafeText.OneLine(item.Question)}";
        return new([new(mark + " ", isChosen ? Ink.Chosen : ink), new(TextFit.Exactly(text, width - 2), isChosen ? Ink.Chosen : Ink.Plain)]);
    }

    private static (string Mark, Ink Ink) Mark(ScreeningItem item, ScreeningAnswer? given) => (item.Kind, given?.Answer) switch
    {
        (ScreeningKind.Contraindication, Answer.No) => (" ", Ink.Plain),
        (ScreeningKind.Contraindication, Answer.Yes) when item.CanBeCleared && given!.Clearance is not null => ("i", Ink.Note),
        (ScreeningKind.Contraindication, _) => ("X", Ink.Stop),
        (ScreeningKind.Precaution, Answer.Yes) => Cap(item).Length > 0 ? ("!", Ink.Warning) : ("i", Ink.Note),
        _ => (" ", Ink.Plain),
    };

    private static string Heading(ScreeningKind kind) => kind switch
    {
        ScreeningKind.Contraindication => "Contraindications: each bars stim until its answer is no",
        ScreeningKind.Precaution => "Precautions: stim with the stated care",
        _ => "For the record",
    };

    internal static string Consequence(ScreeningState state) => state.Gate.Barred
        ? $"STIM STAYS BARRED: {state.Gate.Reasons.Length} reason{(state.Gate.Reasons.Length == 1 ? "" : "s")} below. The active part is drafted all the same."
        : "Stim is not barred by these answers.";

    private static string Cap(ScreeningItem item) => (item.SessionsPerDayAtMost is int sessions ? $" At most {sessions} session a day." : "")
        + (item.ContractionShareAtMost is { } share ? $" At most {share} of the contractions." : "");

    private static string Lifts(ScreeningItem item) => item.Kind == ScreeningKind.NoConcern ? ""
        : item.CanBeCleared ? "A named clinician's clearance lifts or covers it (c)." : "No clearance lifts it.";

    internal static string RestQuestion(ScreeningState state) => $"{state.Rest.Count()} questions that bear on stim have no answer yet. Was each of them asked, and was each answer no?  y: asked, all no   n: back. What is asked for the record alone stays not asked.";
}
