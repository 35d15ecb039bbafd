using System.Collections.Immutable;
using System.Globalization;

namespace Progression.Core.Reviews;

/// <summary>What stands on everything that is printed of a plan: that it is an unsigned draft, or who signed it and how that can be checked.</summary>
public static class PrintMark
{
    /// <summary>The lines of the mark, none longer than 80 characters but where a name makes it so.</summary>
    /// <param name="standing">Where the plan stands.</param>
    /// <param name="chainHead">Hash of the last entry of the records; null where it is not known.</param>
    public static ImmutableArray<string> Of(ReviewStanding standing, string? chainHead)
    {
        ArgumentNullException.ThrowIfNull(standing);
        if (standing is not { State: SignatureState.Signed, Signature: { } signed })
        {
            return [$"{SignatureWords.Of(standing)}.", "No supervisor has signed the plan as it stands here. It is not for the patient's hands."];
        }

        return
        [
            $"{SignatureWords.Of(standing)}.",
            $"\"{SignatureWords.Of(signed.Meaning ?? SignatureMeaning.Agreed)}\"",
            $"{signed.By.Name}, {signed.By.Role.ToString().ToLowerInvariant()}, {signed.At.ToUniversalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC",
            $"Plan hash  {signed.Plan.Hash}",
            .. chainHead is null ? [] : new[] { $"Chain head {chainHead}" },
        ];
    }
}
