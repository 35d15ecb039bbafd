using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Reassessing;

namespace Progression.App.Propose;

/// <summary>A proposed change and the outlook in words.</summary>
internal static class ProposeText
{
    /// <summary>A content and the one proposed for it; where there is no room for both, what they begin with alike stands once.</summary>
    public static string Turn(string old, string now, int width)
    {
        string whole = $"{old} → {now}";
        (string[] was, string[] will) = (old.Split(' '), now.Split(' '));
        int alike = was.Zip(will).TakeWhile(pair => pair.First == pair.Second).Count();
        if (alike == 0 || SafeText.Width(whole) <= width)
        {
            return whole;
        }

        (string gone, string come) = (string.Join(' ', was[alike..]), string.Join(' ', will[alike..]));
        string change = come.Length == 0 ? $"without {gone}" : gone.Length == 0 ? $"with {come}" : $"{gone} → {come}";
        return $"{string.Join(' ', was[..alike])}: {change}";
    }

    /// <summary>Everything to be said of a change, wrapped to a width; what it rests on only when asked for in full.</summary>
    public static IReadOnlyList<PictureRow> Change(ProposeState state, ProposedChange change, int width, bool full)
    {
        List<PictureRow> lines =
        [
            .. TextLines.Wrapped($"{state.Place(change.Address)}: {state.Text(change.Address, change.Old)} → {state.Text(change.Address, change.New)}", width, Ink.Strong),
        ];
        if (change.IsPinned)
        {
            lines.AddRange(TextLines.Wrapped("* The cell was set by hand and stays. The draft disagrees, for this reason:", width, Ink.Warning));
        }

        lines.AddRange(TextLines.Labelled("Because", change.Reason, width));
        lines.AddRange(TextLines.Labelled("How sure", change.Confidence, width));
        if (change.With is { } partner)
        {
            lines.AddRange(TextLines.Labelled("Together with", state.Place(partner), width));
        }

        if (full)
        {
            lines.AddRange(TextLines.Labelled("Placed because", change.Basis.Reason, width));
            lines.AddRange(change.Basis.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width)));
        }

        lines.AddRange(TextLines.Labelled("Rule", change.Basis.Rule, width));
        lines.AddRange(change.Basis.Limits.SelectMany(limit => TextLines.Labelled("Limit", $"{limit.Title}: {limit.Text}; {limit.Source}", width)));
        lines.AddRange(TextLines.Labelled("Source", change.Basis.Source.ToString(), width));
        return [.. lines, .. TextLines.Labelled("Would change", change.Basis.WouldChange, width)];
    }

    /// <summary>What is expected of each milestone, by measure, or why nothing is.</summary>
    public static IReadOnlyList<PictureRow> Outlook(ProposeState state, int width)
    {
        List<PictureRow> lines = [.. TextLines.Wrapped("What is expected: ranges and chances, never promises. Only measured criteria and the clinician move a phase.", width)];
        foreach ((string measure, ForecastAnswer answer) in state.Desk.Forecasts)
        {
            lines.Add(PictureRow.Empty);
            lines.AddRange(TextLines.Wrapped(state.Desk.Library.Measures.TryGetValue(measure, out Core.Library.Measure? known) ? known.Title : measure, width, Ink.Strong));
            lines.AddRange(answer.Forecast is { } forecast ? Expected(forecast, width) : TextLines.Wrapped($"No forecast: {answer.WhyNot}", width, Ink.Warning));
        }

        return lines;
    }

    private static IEnumerable<PictureRow> Expected(Forecast forecast, int width) =>
    [
        .. forecast.Surprise is { IsOff: true } surprise ? TextLines.Wrapped($"! The newest reading is {surprise.Words}.", width, Ink.Warning) : [],
        .. TextLines.Labelled("Rests on", forecast.BasisWords, width),
        .. forecast.Milestones.SelectMany(outlook => TextLines.Labelled(outlook.Milestone.Title, outlook.Words, width)),
        .. TextLines.Labelled("Source", forecast.Source.ToString(), width),
    ];
}
