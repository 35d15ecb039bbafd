using Progression.Core.Library;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Stores;

/// <summary>A store that is worked on, with what its cases are read by.</summary>
public sealed record OpenStore
{
    /// <summary>Its folder.</summary>
    public required string Folder { get; init; }

    /// <summary>Its cases and plans.</summary>
    public required CaseBook Book { get; init; }

    /// <summary>The unsaved work of this account.</summary>
    public required DraftShelf Drafts { get; init; }

    /// <summary>Where the settings of the person who works are kept; null for the usual place in their home.</summary>
    public string? Settings { get; init; }

    /// <summary>The file that remembers what the columns of a person's tables are; null for none.</summary>
    public string? Columns { get; init; }

    /// <summary>What the clinic has set; null for the records of one person.</summary>
    public ClinicSettings? Clinic { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Hears how far a long work with it is, and may throw to break it off; null for nobody.</summary>
    public IProgress<WorkDone>? Progress { get; init; }

    /// <summary>Whether it holds the demo scenario.</summary>
    public bool IsDemo { get; init; }

    /// <summary>The present day where the program runs.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
}
