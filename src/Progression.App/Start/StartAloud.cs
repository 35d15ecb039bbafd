using Progression.App.Actions;
using Progression.App.Caseload;

namespace Progression.App.Start;

/// <summary>The list of cases in words.</summary>
internal static class StartAloud
{
    public static ScreenAloud<StartState> Words { get; } = new()
    {
        Opening = state => state.Mode == StartMode.List ? ["It suggests; a licensed clinician decides.", .. state.HitRate is { Words: { } held } ? [held] : Array.Empty<string>()] : [],
        Here = state => state.Mode switch
        {
            StartMode.List => [state.Chosen is { } line ? $"{state.Index + 1} of {state.Shown.Length}: {Line(state, line)}"
                : state.Cases.IsEmpty ? "There is no case yet: new makes one, demo shows invented ones." : "No case is like that: all shows every case again."],
            _ => null,
        },
        Asks = state => state.Mode == StartMode.Find ? Finding(state) : null,
        Read = (state, part) => part.Length == 0 && state.Mode == StartMode.List ? state.Shown.Select(line => Line(state, line)) : null,
        Go = (state, words) => state.Mode == StartMode.List && SpokenNames.Fitting(words, state.Shown.Select(line => line.Code.Text)) is { Count: > 0 } found ? state.To(found[0]) : null,
    };

    private static ScreenQuestion Finding(StartState state) => new("Part of a code, left or right, or who saved; one case found is opened, of several the list is shown")
    {
        Now = state.Finding.Text,
        TakenBy = state.Shown.Length == 1 ? "Enter" : "Tab",
    };

    private static string Line(StartState state, CaseLine line)
    {
        string week = line.Standing is { } standing ? $", week {standing.Week}{(line.Weeks is int weeks ? $" of {weeks}" : "")}" : "";
        string plan = line.Revision is int revision ? $", plan revision {revision}" : ", no plan";
        return $"{line.Code}, {line.Knee} knee{week}{plan}; {string.Join("; ", CaseWords.All(line, state.Today))}; saved by {line.SavedBy}.";
    }
}
