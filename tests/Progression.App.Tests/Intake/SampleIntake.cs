using Progression.App.Actions;
using Progression.App.Intake;
using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Library;

namespace Progression.App.Tests.Intake;

/// <summary>The form of a case and the screening, driven by keys.</summary>
internal static class SampleIntake
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    public static ClinicalLibrary Library { get; } = LibraryReader.Default();

    public static Case Knee { get; } = new() { Code = CaseCode.Parse("WREN-01")!, Operation = new Operation(new(2026, 11, 16), Side.Left, "Total knee replacement"), Weeks = 7 };

    public static IntakeState New(params string[] taken) => IntakeState.Open(new IntakeDesk { Library = Library, Today = Today, Taken = [.. taken] });

    public static IntakeState Kept(Case patient) => IntakeState.Open(new IntakeDesk { Library = Library, Today = Today, Case = patient });

    public static ScreeningState Screening(Case? patient = null) => ScreeningState.Open(patient ?? Knee, Library, Today);

    /// <summary>A new case with what is needed.</summary>
    public static IntakeState Filled(string operated = "2026-11-16") =>
        Fill(Fill(Fill(New(), "code", "wren-01"), "operated", operated), "side", "l");

    /// <summary>Puts the caret in a line, types and hands in.</summary>
    public static IntakeState Fill(IntakeState state, string line, string text) => Press(Typed(state, line, text), "Enter");

    public static IntakeState Typed(IntakeState state, string line, string text) =>
        IntakeScreen.Definition.Paste(Press(state with { Form = state.Form.To(line) }, "Ctrl+U"), text);

    public static IntakeState Press(IntakeState state, params string[] keys) => keys.Aggregate(state, (now, key) => Step(now, key).State);

    public static Step<IntakeState> Step(IntakeState state, string key) => IntakeScreen.Definition.Press(state, key, key.Length == 1 ? key : null);

    public static CaseTyped Taken(IntakeState state) => Assert.IsType<CaseTyped>(Assert.Single(Step(state, "Ctrl+S").Effects));

    public static ScreeningState Press(ScreeningState state, params string[] keys) => keys.Aggregate(state, (now, key) => Step(now, key).State);

    public static Step<ScreeningState> Step(ScreeningState state, string key) => ScreeningScreen.Definition.Press(state, key, key.Length == 1 ? key : null);

    public static ScreeningState At(ScreeningState state, string item) => state.To(state.Items.ToList().FindIndex(one => one.Id == item));

    public static string Text(IntakeState state, int width = 80, int height = 24) => Drawn(state, width, height).Text;

    public static string Text(ScreeningState state, int width = 80, int height = 24) => Drawn(state, width, height).Text;

    public static Picture Drawn(IntakeState state, int width, int height) => IntakePicture.Draw(state, new(width, height)).Fit(new PictureSize(width, height));

    public static Picture Drawn(ScreeningState state, int width, int height) => ScreeningPicture.Draw(state, new(width, height)).Fit(new PictureSize(width, height));

    public static string Flowing(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
