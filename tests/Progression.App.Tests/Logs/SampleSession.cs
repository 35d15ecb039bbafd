using Progression.App.Actions;
using Progression.App.Logs;
using Progression.App.Pictures;
using Progression.App.Tests.Grid;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Tests.Logs;

/// <summary>The session log of the invented plan in its third week, the day after a session.</summary>
internal static class SampleSession
{
    public static Case Knee { get; } = Sample.Desk.Case with
    {
        Sessions = [new SessionLog(new(2026, 11, 17), 15) { Peak = Current.FromMilliamperes(58), Comfort = 6, PainBefore = 2, PainAfter = 4, Skin = SkinCheck.Clear }],
    };

    public static LogState Open(Case? patient = null, bool planned = true) =>
        LogState.Open(new LogDesk(patient ?? Knee, planned ? Sample.Plan() : null, SampleLibrary.Library, Sample.Today));

    public static LogState Fill(LogState state, string line, string text) => Press(Typed(Press(state with { Form = state.Form.To(line) }, "Ctrl+U"), text), "Enter");

    public static LogState Typed(LogState state, string text) => LogScreen.Definition.Paste(state, text);

    public static LogState Press(LogState state, params string[] keys) => keys.Aggregate(state, (now, key) => Step(now, key).State);

    public static Step<LogState> Step(LogState state, string key) => LogScreen.Definition.Press(state, key, key.Length == 1 ? key : null);

    public static SessionReady Ready(LogState state, string key = "Ctrl+S") => Assert.IsType<SessionReady>(Assert.Single(Step(state, key).Effects));

    public static string Text(LogState state, int width = 80, int height = 24) => LogPicture.Draw(state, new(width, height)).Fit(new PictureSize(width, height)).Text;
}
