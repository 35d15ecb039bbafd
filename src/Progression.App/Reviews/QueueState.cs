using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Reviews;

/// <summary>The reviews that wait, at one moment. It knows no terminal and no store.</summary>
public sealed record QueueState
{
    /// <summary>The account that looks.</summary>
    public required string Account { get; init; }

    /// <summary>The moment it was read.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>What waits for somebody's review: first what others asked for, then what this account did; each by what was found, then by age.</summary>
    public ImmutableArray<WaitingReview> Waiting { get; init; } = [];

    /// <summary>How many of them others have asked for.</summary>
    public int FromOthers => Waiting.Count(one => !IsOwn(one));

    /// <summary>The one under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public QueueMode Mode { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The one under the cursor; null when nothing waits.</summary>
    public WaitingReview? Chosen => Waiting.IsEmpty ? null : Waiting[Math.Clamp(Index, 0, Waiting.Length - 1)];

    /// <summary>Whether this account asked for it: not theirs to sign.</summary>
    public bool IsOwn(WaitingReview one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return one.AskedByAccount == Account;
    }

    /// <summary>The state with the cursor on another; it stays at the ends.</summary>
    public QueueState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Waiting.Length - 1)), Status = "" };

    /// <summary>The state with what waits now; the cursor stays on its case where that still waits.</summary>
    public QueueState With(IEnumerable<WaitingReview> waiting, DateTimeOffset now)
    {
        CaseCode? on = Chosen?.Code;
        QueueState read = this with { Now = now, Waiting = Ordered(waiting) };
        int at = read.Waiting.ToList().FindIndex(one => one.Code == on);
        return read with { Index = Math.Clamp(at < 0 ? Index : at, 0, Math.Max(0, read.Waiting.Length - 1)) };
    }

    private ImmutableArray<WaitingReview> Ordered(IEnumerable<WaitingReview> waiting) =>
    [
        .. waiting.OrderBy(IsOwn).ThenBy(one => one.Risk, Comparer<Core.Reviews.PlanRisk>.Create((one, other) => one.Before(other)))
            .ThenBy(one => one.AskedAt).ThenBy(one => one.Code.Text, StringComparer.Ordinal),
    ];
}
