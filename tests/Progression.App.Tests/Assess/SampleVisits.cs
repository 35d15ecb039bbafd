using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Library;

namespace Progression.App.Tests.Assess;

/// <summary>An invented knee in its fourth week with two visits and measures from before the operation, and the form on it.</summary>
internal static class SampleVisits
{
    public static readonly DateOnly Operated = new(2026, 11, 2);
    public static readonly DateOnly First = new(2026, 11, 9);
    public static readonly DateOnly Second = new(2026, 11, 18);
    public static readonly DateOnly Today = new(2026, 11, 25);

    public static ClinicalLibrary Library { get; } = LibraryReader.Default();

    public static Case Knee { get; } = new()
    {
        Code = CaseCode.Parse("K-020")!,
        Operation = new Operation(Operated, Side.Right, "total knee replacement"),
        OtherKnee = OtherKnee.Sound,
        BodyMass = Mass.FromKilograms(80),
        Therapist = "CD",
        DeficitWritten = DeficitSign.Positive,
        PreOp = Visit(new(2026, 10, 20), null, new Reading(MeasureIds.QuadricepsTorque, 100), new Reading(MeasureIds.FlexionActive, 120)),
        Assessments =
        [
            Visit(First, "AB", new Reading(MeasureIds.FlexionActive, 62), new Reading(MeasureIds.ExtensionActive, 18), new Reading(MeasureIds.ExtensionPassive, 6)),
            Visit(
                Second, "AB",
                new Reading(MeasureIds.FlexionActive, 78) { Device = "long goniometer", Position = "supine" },
                new Reading(MeasureIds.ExtensionActive, 14), new Reading(MeasureIds.ExtensionPassive, 6),
                new Reading(MeasureIds.QuadricepsForce, 140), new Reading(MeasureIds.OtherForce, 300), new Reading(MeasureIds.LeverArm, 30),
                new Reading(MeasureIds.PainRest, 3), new Reading(MeasureIds.Effusion, 2)) with
            {
                SignsSeen = ImmutableSortedDictionary<string, Answer>.Empty.Add(Signs.StraightLegRaise, Answer.Yes),
            },
        ],
    };

    public static AssessState Open(Case? patient = null, DateOnly? visit = null) => AssessState.Open(AssessDesk.For(patient ?? Knee, Library, Today), visit);

    /// <summary>The form where nothing is ever odd and every change is an improvement, so that pictures do not move with the shipped data.</summary>
    public static AssessState Still() => AssessState.Open(AssessDesk.For(Knee, Library, Today) with { QueriesOn = (_, _) => [], ChangeOf = Improved });

    /// <summary>Puts the caret in a line, types and hands in.</summary>
    public static AssessState Fill(AssessState state, string line, string text) => Press(Typed(state with { Form = state.Form.To(line) }, text), "Enter");

    public static AssessState Typed(AssessState state, string text) => AssessScreen.Definition.Paste(Press(state, "Ctrl+U"), text);

    public static AssessState Press(AssessState state, params string[] keys) => keys.Aggregate(state, (now, key) => Step(now, key).State);

    public static Step<AssessState> Step(AssessState state, string key) => AssessScreen.Definition.Press(state, key, key.Length == 1 ? key : null);

    public static AssessmentReady Ready(AssessState state, string key = "Ctrl+S") => Assert.IsType<AssessmentReady>(Assert.Single(Step(state, key).Effects));

    public static string Text(AssessState state, int width = 80, int height = 24) => AssessPicture.Draw(state, new(width, height)).Fit(new PictureSize(width, height)).Text;

    /// <summary>The picture as one line, however its sentences were broken.</summary>
    public static string Flowing(AssessState state) => string.Join(' ', Text(state).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The line of the picture in which a field stands, after going to it.</summary>
    public static string Row(AssessState state, string line, string title) => Text(state with { Form = state.Form.To(line) }, 120, 40).Split('\n').First(row => row.Contains(title, StringComparison.Ordinal));

    private static Assessment Visit(DateOnly day, string? rater, params Reading[] readings) =>
        new(day, readings.ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal), ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal))
        {
            Rater = rater,
        };

    private static Change? Improved(ImmutableArray<KneeState> states, string measure) =>
        states[..^1].LastOrDefault(state => state.Value(measure) is not null) is { } old
            ? new Change
            {
                Measure = Library.Measures[measure],
                From = old.Date,
                To = states[^1].Date,
                Old = old.Value(measure)!.Value,
                New = states[^1].Value(measure)!.Value,
                IsBetter = true,
                Detectable = 5,
                LevelPercent = 90,
                Class = ChangeClass.Improved,
                Source = new Source("Invented for the tests", Standing.CommonPractice),
            }
            : null;
}
