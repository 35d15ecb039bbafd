using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.People;

/// <summary>How the knee that was not operated is; decides whether the other leg may serve as a yardstick.</summary>
public enum OtherKnee
{
    /// <summary>Not known.</summary>
    NotKnown,

    /// <summary>Neither operated nor painful.</summary>
    Sound,

    /// <summary>Painful.</summary>
    Painful,

    /// <summary>Operated before.</summary>
    Operated,
}

/// <summary>What the surgeon has bounded. Null means no such bound is known.</summary>
public sealed record SurgeonLimits
{
    /// <summary>Most knee flexion allowed.</summary>
    public Angle? FlexionAtMost { get; init; }

    /// <summary>First day on which added resistance is allowed.</summary>
    public DateOnly? NoResistanceBefore { get; init; }

    /// <summary>Anything else, in words.</summary>
    public string? Text { get; init; }

    /// <summary>No bound known.</summary>
    public static SurgeonLimits NotStated { get; } = new();
}

/// <summary>One knee of one person: everything a plan is made from. No name: the code stands for the person.</summary>
public sealed record Case
{
    /// <summary>The code.</summary>
    public required CaseCode Code { get; init; }

    /// <summary>The operation.</summary>
    public required Operation Operation { get; init; }

    /// <summary>Date of birth; null when not given.</summary>
    public DateOnly? Born { get; init; }

    /// <summary>Body mass; null when not given.</summary>
    public Mass? BodyMass { get; init; }

    /// <summary>Load allowed on the leg; null when not stated, which admits nothing that needs load.</summary>
    public WeightBearing? WeightBearing { get; init; }

    /// <summary>How the other knee is.</summary>
    public OtherKnee OtherKnee { get; init; }

    /// <summary>What the surgeon has bounded.</summary>
    public SurgeonLimits Surgeon { get; init; } = SurgeonLimits.NotStated;

    /// <summary>The therapist's initials or role; null when not given.</summary>
    public string? Therapist { get; init; }

    /// <summary>The stimulator in use, in words; null when not given.</summary>
    public string? Stimulator { get; init; }

    /// <summary>The pads in use; null when not given.</summary>
    public PadSize? Pads { get; init; }

    /// <summary>Screening for stim.</summary>
    public Screening Screening { get; init; } = Screening.NotDone;

    /// <summary>What was measured before the operation; null when nothing was.</summary>
    public Assessment? PreOp { get; init; }

    /// <summary>Assessments since the operation, oldest first, one a day.</summary>
    public ImmutableArray<Assessment> Assessments { get; init; } = [];

    /// <summary>Logged sessions, with stim or without, oldest first.</summary>
    public ImmutableArray<SessionLog> Sessions { get; init; } = [];

    /// <summary>The logged sessions in which there was stim, oldest first.</summary>
    public IEnumerable<SessionLog> StimSessions => Sessions.Where(log => log.Contractions > 0);

    /// <summary>The notes by which red flags were closed, oldest first.</summary>
    public ImmutableArray<FlagNote> FlagNotes { get; init; } = [];

    /// <summary>How extension deficits are written when they are entered for this case; null while nobody has been asked.</summary>
    public DeficitSign? DeficitWritten { get; init; }

    /// <summary>The regimen chosen; null for the library's default.</summary>
    public string? Regimen { get; init; }

    /// <summary>Weeks of plan asked for, 1 to 26; null for six.</summary>
    public int? Weeks { get; init; }

    /// <summary>First day the plan may fill; null for the day after the operation. A draft starts no earlier than the last assessment all the same.</summary>
    public DateOnly? PlanFrom { get; init; }
}
