using System.Globalization;
using System.Text.Json.Nodes;
using Progression.App.Reviews;
using Progression.Core.Reviews;
using Progression.Records.Caseload;
using Progression.Records.Reviews;

namespace Progression.App.Commands.Reviews;

/// <summary>What is answered about reviews, as text and as JSON, which is described in shared/schema.</summary>
internal static class ReviewAnswers
{
    /// <summary>Whether a plan is signed, as a part of larger answers.</summary>
    internal static JsonObject Signature(ReviewStanding standing) => new()
    {
        ["state"] = standing.State switch { SignatureState.Signed => "signed", SignatureState.ChangedSince => "changed since", _ => "unsigned" },
        ["text"] = SignatureWords.Of(standing),
        ["review"] = standing switch { { Request: not null } => "asked", { Return: not null } => "returned", _ => null },
        ["by"] = standing.Signature?.By.Name,
        ["at"] = standing.Signature is { } signed ? Instant(signed.At) : null,
        ["revision"] = standing.Signature?.Plan.Revision,
        ["hash"] = standing.Signature?.Plan.Hash,
    };

    internal static JsonObject Of(QueueState queue) => new()
    {
        ["schema"] = "reviews/1",
        ["waiting"] = new JsonArray([.. queue.Waiting.Select(one => new JsonObject
        {
            ["code"] = one.Code.Text,
            ["asked_by"] = one.AskedBy,
            ["asked_at"] = Instant(one.AskedAt),
            ["own"] = queue.IsOwn(one),
            ["revision"] = one.Revision,
            ["newest"] = one.Newest,
            ["risk"] = ReviewJson.Node(one.Risk),
        })]),
    };

    internal static JsonObject Of(OpenedReview review) => new()
    {
        ["schema"] = "review-of/1",
        ["code"] = review.Code.Text,
        ["revision"] = review.Review.Newest.Revision,
        ["signature"] = Signature(review.Review.Standing),
        ["acts"] = ReviewJson.Node(review.Review.Record)["acts"]?.DeepClone() ?? new JsonArray(),
    };

    internal static string Text(QueueState queue) => string.Join('\n',
        queue.Waiting.Select(one => QueueWords.Whole(one, queue.Now) + (queue.IsOwn(one) ? $" {QueueWords.NotYours}." : "")).Append($"{QueueWords.Count(queue)}."));

    internal static string Text(OpenedReview review) => string.Join('\n',
    [
        $"{review.Code}, plan revision {review.Review.Newest.Revision}.",
        .. PrintMark.Of(review.Review.Standing, null),
        .. SignatureWords.Review(review.Review.Standing) is { Length: > 0 } stands ? [stands] : Array.Empty<string>(),
        .. review.Review.Record.Acts.SelectMany(Lines),
    ]);

    private static IEnumerable<string> Lines(ReviewAct act) =>
    [
        $"{act.At.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC  {act.By.Name} {SignatureWords.Of(act.Step)}, revision {act.Plan.Revision}",
        .. act.Comments.Select(comment => $"    {(comment.Cell is { } cell ? cell.ToString() : "the plan")}: {comment.Text}"),
    ];

    private static string Instant(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
