using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>The list of cases in words.</summary>
internal static class StartAloud
{
    public static ScreenAloud<StartState> Words { get; } = new()
    {
        Opening = state => state.Mode == StartMode.List ? ["It suggests; a licensed clinician decides.", .. state.HitRate is { Words: { } held } ? [held] : Array.Empty<string>()] : [],
        Here = state => state.Mode switch
        {
            StartMode.List => [state.Chosen is { } line ? $"{state.Index + 1} of {state.Cases.Length}: {Line(state, line)}" : "There is no case yet: new makes one, demo shows invented ones."],
            _ => null,
        },
        Read = (state, part) => part.Length == 0 && state.Mode == StartMode.List ? state.Cases.Select(line => Line(state, line)) : null,
        Go = (state, words) => state.Mode == StartMode.List && SpokenNames.Fitting(words, state.Cases.Select(line => line.Code.Text)) is { Count: > 0 } found ? state.To(found[0]) : null,
    };

    private static string Line(StartState state, CaseLine line)
    {
        string week = line.Operation is DateOnly day ? $", week {PostOpWeek.Of(day, state.Today)}{(line.Weeks is int weeks ? $" of {weeks}" : "")}" : "";
        string plan = line.Revision is int revision ? $", plan revision {revision}" : ", no plan";
        return $"{line.Code}, {line.Knee} knee{week}{plan}{(line.HasDraft ? ", draft kept" : "")}, saved by {line.SavedBy}.";
    }
}
