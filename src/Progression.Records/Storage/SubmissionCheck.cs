using System.Collections.Immutable;
using System.Text;
using Progression.Records.Json;

namespace Progression.Records.Storage;

/// <summary>What can be said of a submission without looking into the store.</summary>
internal static class SubmissionCheck
{
    private const int LongestCode = 64;
    private const int LongestName = 200;
    private const int LargestBody = 8 * 1024 * 1024;

    /// <summary>The submission with canonical bodies and the time cut to milliseconds, or null and what is wrong.</summary>
    public static Submission? Read(Submission submission, out string problem)
    {
        ArgumentNullException.ThrowIfNull(submission);
        problem = ProblemOfHead(submission);
        if (problem.Length > 0)
        {
            return null;
        }

        ImmutableArray<Draft>.Builder drafts = ImmutableArray.CreateBuilder<Draft>();
        foreach (Draft draft in submission.Drafts)
        {
            problem = Problem(draft, out string body);
            if (problem.Length > 0)
            {
                return null;
            }

            drafts.Add(draft with { Body = body });
        }

        DateTimeOffset at = submission.At.ToUniversalTime();
        return submission with { Drafts = drafts.ToImmutable(), At = at.AddTicks(-(at.Ticks % TimeSpan.TicksPerMillisecond)) };
    }

    private static string ProblemOfHead(Submission submission)
    {
        if (!IsWord(submission.CaseCode, LongestCode))
        {
            return $"A case code has 1 to {LongestCode} characters, no control character and no blank at either end.";
        }

        if (!IsWord(submission.By.UserId, LongestName) || !IsWord(submission.By.Name, LongestName))
        {
            return $"Account and name of the person who saves must have 1 to {LongestName} characters, none of them a control character.";
        }

        if (submission.Drafts.IsDefaultOrEmpty)
        {
            return "There is nothing to save.";
        }

        if (submission.Drafts.Any(draft => draft.Kind == RecordKind.Audit) != (submission.CaseCode == AuditChain.Code))
        {
            return $"Audit entries have the chain '{AuditChain.Code}' for themselves.";
        }

        return submission.Drafts.Select(draft => draft.Kind).Distinct().Count() < submission.Drafts.Length
            ? "A submission can hold only one draft of each kind."
            : "";
    }

    private static string Problem(Draft draft, out string body)
    {
        body = "";
        if (!Enum.IsDefined(draft.Kind))
        {
            return "There is no such kind of record.";
        }

        if (draft.BasedOn is { } basis && (basis.Revision is < 1 or int.MaxValue || basis.Hash.Length != Sha256Text.Length))
        {
            return $"The {draft.Kind.Word()} is based on something that cannot be a revision.";
        }

        if (!CanonicalJson.TryOf(draft.Body, out string? canonical, out string? problem))
        {
            return $"The {draft.Kind.Word()} cannot be stored. {problem}";
        }

        body = canonical;
        return canonical[0] != '{' ? $"The {draft.Kind.Word()} must be a JSON object."
            : Encoding.UTF8.GetByteCount(canonical) > LargestBody ? $"The {draft.Kind.Word()} is larger than {LargestBody} bytes."
            : "";
    }

    private static bool IsWord(string text, int longest) =>
        text.Length > 0 && text.Length <= longest && text == text.Trim()
        && text.EnumerateRunes().All(rune => !Rune.IsControl(rune) && rune != Rune.ReplacementChar);
}
