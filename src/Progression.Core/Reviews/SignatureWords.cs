using System.Globalization;

namespace Progression.Core.Reviews;

/// <summary>The words for whether a plan is signed and where its review stands: the same on every screen, in every answer and print.</summary>
public static class SignatureWords
{
    /// <summary>How many digits of a hash are shown where the whole has no room.</summary>
    public const int ShownDigits = 12;

    /// <summary>The words for a plan that is not signed.</summary>
    public const string Unsigned = "UNSIGNED DRAFT";

    /// <summary>Whether the plan is signed: "UNSIGNED DRAFT", "Signed by NAME, DAY, revision N, hash …", "UNSIGNED DRAFT: changed since …".</summary>
    public static string Of(ReviewStanding standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return standing.State switch
        {
            SignatureState.Signed => $"Signed by {By(standing.Signature!)}, revision {standing.Plan.Revision}, hash {Short(standing.Plan.Hash)}",
            SignatureState.ChangedSince => $"{Unsigned}: changed since it was signed by {By(standing.Signature!)}, revision {standing.Signature!.Plan.Revision}",
            _ => Unsigned,
        };
    }

    /// <summary>The same in two or three words, for a title line.</summary>
    public static string Brief(ReviewStanding standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return standing switch
        {
            { Request: not null, IsStale: true } => "changed since review asked",
            { Request: not null } => "review asked",
            { Return: not null } => "returned",
            { State: SignatureState.Signed } => "signed",
            { State: SignatureState.ChangedSince } => "changed since signed",
            _ => "unsigned",
        };
    }

    /// <summary>Where the review stands, as a sentence; empty where nothing was asked for, or the signature says all.</summary>
    public static string Review(ReviewStanding standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return standing switch
        {
            { Request: { } request, IsStale: true } => $"Review of revision {request.Plan.Revision} asked for by {By(request)}; the plan was changed since.",
            { Request: { } request } => $"Review asked for by {By(request)}.",
            { Return: { } back } => $"Returned by {By(back)}, with {Comments(back.Comments.Length)}.",
            _ => "",
        };
    }

    /// <summary>What a signature says, in the first person.</summary>
    public static string Of(SignatureMeaning meaning) => meaning switch
    {
        SignatureMeaning.AgreedWithComments => "I have reviewed this plan and agree that it is carried out with my comments heeded.",
        SignatureMeaning.AnsweredFor => "I have reviewed this plan, agree that it is carried out and answer for it.",
        _ => "I have reviewed this plan and agree that it is carried out.",
    };

    /// <summary>What was done, in the past: "asked for a review".</summary>
    public static string Of(ReviewStep step) => step switch
    {
        ReviewStep.Requested => "asked for a review",
        ReviewStep.Withdrawn => "took the request back",
        ReviewStep.Commented => "commented",
        ReviewStep.Returned => "returned the plan",
        _ => "signed",
    };

    /// <summary>The first digits of a hash.</summary>
    public static string Short(string hash)
    {
        ArgumentNullException.ThrowIfNull(hash);
        return hash.Length <= ShownDigits ? hash : hash[..ShownDigits];
    }

    /// <summary>"2 Nov 2026".</summary>
    public static string Day(DateTimeOffset at) => at.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"1 comment", "3 comments".</summary>
    public static string Comments(int count) => count == 1 ? "1 comment" : $"{count} comments";

    private static string By(ReviewAct act) => $"{act.By.Name}, {Day(act.At)}";
}
