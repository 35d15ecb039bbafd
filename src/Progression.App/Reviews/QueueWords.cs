using Humanizer;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Reviews;

/// <summary>How a waiting review is told.</summary>
public static class QueueWords
{
    /// <summary>What it means that a request is one's own.</summary>
    public const string NotYours = "Asked for by you: not yours to sign";

    /// <summary>The post-op week on the day it is read; empty when the operation is not known.</summary>
    public static string Week(WaitingReview one, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(one);
        return one.Operation is DateOnly operation ? $"{PostOpWeek.Of(operation, DateOnly.FromDateTime(now.UtcDateTime))}" : "";
    }

    /// <summary>"2 hours ago".</summary>
    public static string Age(WaitingReview one, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(one);
        return one.AskedAt.Humanize(now);
    }

    /// <summary>How many cells changed; "all new" where no revision was signed yet.</summary>
    public static string Changed(PlanRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.Changed is int changed ? $"{changed}" : "all new";
    }

    /// <summary>"4", or "4, now 5" where the plan was changed since.</summary>
    public static string Revision(WaitingReview one)
    {
        ArgumentNullException.ThrowIfNull(one);
        return one.IsStale ? $"{one.Revision}, now {one.Newest}" : $"{one.Revision}";
    }

    /// <summary>All of it in a sentence.</summary>
    public static string Whole(WaitingReview one, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(one);
        PlanRisk risk = one.Risk;
        string week = Week(one, now) is { Length: > 0 } number ? $", week {number}" : "";
        string changed = risk.Changed is int cells ? $"{Many(cells, "cell")} changed since the plan was signed" : "never signed before";
        string stale = one.IsStale ? $"; the plan was changed since and is at revision {one.Newest}" : "";
        return SafeText.OneLine(
            $"{one.Code}{week}: revision {one.Revision}, asked for by {one.AskedBy} {Age(one, now)}; {Many(risk.Stops, "stop")}, {risk.Severe} severe, {Many(risk.Warnings, "warning")}, "
                + $"{Many(risk.Overrides, "override")}, {changed}{stale}.");
    }

    /// <summary>How many wait: "3 plans wait for a review, 1 of them asked for by you".</summary>
    public static string Count(QueueState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        int own = state.Waiting.Length - state.FromOthers;
        string count = state.Waiting.Length switch { 0 => "nothing waits", 1 => "1 plan waits", int many => $"{many} plans wait" };
        return own == 0 ? count : $"{count}, {own} yours";
    }

    private static string Many(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
