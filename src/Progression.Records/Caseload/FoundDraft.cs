using System.Collections.Immutable;

namespace Progression.Records.Caseload;

/// <summary>A draft that was left on disk by a session that has ended, or earlier in this one.</summary>
/// <param name="File">The name of its file.</param>
/// <param name="Session">Who kept it, and where.</param>
/// <param name="At">When it was kept last.</param>
public sealed record FoundDraft(string File, DraftSession Session, DateTimeOffset At)
{
    /// <summary>Unsaved changes to a plan; null for a form.</summary>
    public KeptDraft? Plan { get; init; }

    /// <summary>A form left half typed; null for a plan.</summary>
    public KeptForm? Form { get; init; }
}

/// <summary>What is kept of one case by one account.</summary>
/// <param name="Drafts">What can be gone on with, the newest first.</param>
/// <param name="Unreadable">A sentence for each file that could not be read; it was set aside and stays on disk.</param>
/// <param name="InUse">How many drafts belong to other sessions of the account that still go on.</param>
public sealed record FoundDrafts(ImmutableArray<FoundDraft> Drafts, ImmutableArray<string> Unreadable, int InUse);
