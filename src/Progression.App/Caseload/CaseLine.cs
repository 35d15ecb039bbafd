using System.Collections.Immutable;
using Progression.Core.Caseload;
using Progression.Core.People;

namespace Progression.App.Caseload;

/// <summary>A case in the list, from what the store keeps for lists. A text is empty and a number null where nothing is known.</summary>
public sealed record CaseLine
{
    /// <summary>The code.</summary>
    public required CaseCode Code { get; init; }

    /// <summary>Which knee: left or right.</summary>
    public required string Knee { get; init; }

    /// <summary>The day of the operation.</summary>
    public DateOnly? Operation { get; init; }

    /// <summary>The day of the latest assessment.</summary>
    public DateOnly? Assessed { get; init; }

    /// <summary>Weeks of the plan.</summary>
    public int? Weeks { get; init; }

    /// <summary>The plan's revision; null when the case has no plan.</summary>
    public int? Revision { get; init; }

    /// <summary>Who saved last.</summary>
    public required string SavedBy { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>Whether this account saved any of its newest revisions.</summary>
    public bool IsMine { get; init; }

    /// <summary>Whether unsaved changes to the plan are kept as a draft.</summary>
    public bool HasDraft { get; init; }

    /// <summary>The revision of the plan that was signed last; null when none was.</summary>
    public int? Signed { get; init; }

    /// <summary>Whether a review of the plan was asked for and waits.</summary>
    public bool IsAsked { get; init; }

    /// <summary>Whether the plan was returned and no review was asked for since.</summary>
    public bool IsReturned { get; init; }

    /// <summary>Where the case stands on the day the list was read; null when what is stored cannot be judged.</summary>
    public CaseStanding? Standing { get; init; }

    /// <summary>What is to be seen at a glance, in the order of the letters.</summary>
    public ImmutableArray<CaseMark> Marks => [.. Enum.GetValues<CaseMark>().Where(Has)];

    /// <summary>Whether a mark stands on the line.</summary>
    public bool Has(CaseMark mark) => mark switch
    {
        CaseMark.Due => Standing?.IsDue == true,
        CaseMark.Behind => Standing is { Behind.IsEmpty: false },
        CaseMark.Unsigned => Standing?.IsUnsigned == true,
        CaseMark.Blocked => Standing is { Blocked.IsEmpty: false },
        _ => HasDraft,
    };

    /// <summary>Whether a text is part of the code, the knee or the name of who saved last; capitals do not matter.</summary>
    public bool Matches(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Code.Text.Contains(text, StringComparison.OrdinalIgnoreCase) || Knee.StartsWith(text, StringComparison.OrdinalIgnoreCase)
            || SavedBy.Contains(text, StringComparison.OrdinalIgnoreCase);
    }
}
