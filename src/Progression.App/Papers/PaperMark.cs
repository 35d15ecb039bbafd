using System.Globalization;
using Progression.Core.Reviews;

namespace Progression.App.Papers;

/// <summary>What stands on a paper of its plan's signature.</summary>
internal static class PaperMark
{
    // What makes it possible to check a signature is the same in every language.
    /// <summary>The mark in the words of the order.</summary>
    public static string Of(PaperOrder order) => order.Standing switch
    {
        { State: SignatureState.Signed, Signature: { } signed } => order.Words.Text(
            "labels.signed",
            ("name", signed.By.Name),
            ("day", signed.At.ToUniversalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ("revision", signed.Plan.Revision.ToString(CultureInfo.InvariantCulture)))
            + $" ({SignatureWords.Short(signed.Plan.Hash)}{(order.ChainHead is { } head ? $" {SignatureWords.Short(head)}" : "")})",
        { State: SignatureState.ChangedSince } => order.Words.Text("labels.changed"),
        _ => order.Words.Text("labels.unsigned"),
    };
}
