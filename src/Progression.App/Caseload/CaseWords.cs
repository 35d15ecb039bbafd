using System.Collections.Immutable;
using Progression.Core.Caseload;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.App.Caseload;

/// <summary>How the list says where a case stands. Every state has a letter and a word, so that none hangs on a colour.</summary>
public static class CaseWords
{
    /// <summary>The letter of a mark.</summary>
    public static char Letter(CaseMark mark) => mark switch
    {
        CaseMark.Due => 'D',
        CaseMark.Behind => 'B',
        CaseMark.Unsigned => 'U',
        CaseMark.Blocked => 'X',
        _ => 'K',
    };

    /// <summary>The letter of a mark on a line: a plan that is not signed may wait for a review, or may have been returned.</summary>
    public static char Letter(CaseLine line, CaseMark mark)
    {
        ArgumentNullException.ThrowIfNull(line);
        return mark != CaseMark.Unsigned ? Letter(mark) : line.IsAsked ? 'A' : line.IsReturned ? 'R' : Letter(mark);
    }

    /// <summary>The letters with what they mean, for the help page.</summary>
    public static ImmutableArray<string> Legend { get; } =
    [
        "  D  due: something is to be done today, or was before",
        "  B  behind: a latest reading is clearly short of its milestones",
        "  U  unsigned: the plan's latest revision is not signed",
        "  A  unsigned, and a review is asked for",
        "  R  unsigned: a reviewer returned the plan",
        "  X  blocked: a red flag is open, or stim is barred",
        "  K  kept draft: unsaved work on the plan",
    ];

    /// <summary>A mark in a word or two.</summary>
    public static string Of(CaseMark mark) => mark == CaseMark.Draft ? "draft kept" : mark.ToString().ToLowerInvariant();

    /// <summary>A mark on a line in a word or two.</summary>
    public static string Of(CaseLine line, CaseMark mark)
    {
        ArgumentNullException.ThrowIfNull(line);
        return mark != CaseMark.Unsigned ? Of(mark) : Unsigned(line, Of(mark));
    }

    /// <summary>A filter in a word.</summary>
    public static string Of(CaseFilter filter) => filter.ToString().ToLowerInvariant();

    /// <summary>An order in a word.</summary>
    public static string Of(CaseOrder order) => order.ToString().ToLowerInvariant();

    /// <summary>What is due first, briefly: "reassess 3 d late", "hard review in 2 d"; "ended" when the plan is over, "" when nothing is known.</summary>
    public static string Due(CaseStanding? standing, DateOnly today) => standing switch
    {
        null => "",
        { HasEnded: true } => "ended",
        { Next: { } next } => $"{Briefly(next)} {When(next, today)}",
        _ => "nothing",
    };

    /// <summary>All that is to be said of a case, part by part; empty when there is nothing.</summary>
    public static ImmutableArray<string> All(CaseLine line, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (line.Standing is not { } standing)
        {
            return ["what is stored cannot be judged; opening it tells more"];
        }

        IEnumerable<string> due = standing.Dues.Where(one => one.On <= today).Take(2).Concat(standing.Dues.Where(one => one.On > today).Take(1)).Take(2)
            .Select(one => $"{one.Words} {(one.On <= today ? "since" : "on")} {one.On:yyyy-MM-dd}");
        return
        [
            .. standing.Blocked.Select(reason => reason.TrimEnd('.')),
            .. due,
            .. standing.HasEnded ? new[] { $"the plan ended with week {line.Weeks}" } : [],
            .. standing.Behind.Take(2).Select(Of),
            .. line.Revision is null ? new[] { "no plan" } : standing.IsUnsigned ? [Unsigned(line, "not signed")] : [],
            .. line.HasDraft ? new[] { "draft kept" } : [],
        ];
    }

    /// <summary>"flexion 72, goal 91 deg on day 18".</summary>
    public static string Of(BehindGoal behind)
    {
        ArgumentNullException.ThrowIfNull(behind);
        string unit = behind.Measure.Unit == "1" ? "" : $" {behind.Measure.Unit}";
        return $"{Short(behind.Measure)} {Number.Text(behind.Value, 0)}, goal {Number.Text(behind.Goal, 0)}{unit} on day {behind.Day}";
    }

    private static string Unsigned(CaseLine line, string never)
    {
        string signed = line.Signed is int revision ? $"changed since revision {revision} was signed" : never;
        return line.IsAsked ? $"{signed} (review asked)" : line.IsReturned ? $"{signed} (returned)" : signed;
    }

    private static string Short(Measure measure) => measure.Id switch
    {
        MeasureIds.FlexionActive => "flexion",
        MeasureIds.ExtensionPassive => "extension",
        MeasureIds.Lag => "lag",
        MeasureIds.PreOpShare => "strength",
        MeasureIds.Index => "index",
        _ => measure.Title,
    };

    private static string Briefly(Due due) => due.Kind switch
    {
        DueKind.TreatmentDays => "reassess",
        DueKind.HardReview => "hard review",
        _ => due.Words,
    };

    private static string When(Due due, DateOnly today) => (due.On.DayNumber - today.DayNumber) switch
    {
        0 => "today",
        < 0 and int past => $"{-past} d late",
        int ahead => $"in {ahead} d",
    };
}
