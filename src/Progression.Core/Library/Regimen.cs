using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>A stim regimen as published. A field the paper leaves open says so; nothing is filled in silently.</summary>
public sealed record Regimen
{
    /// <summary>The permanent id, in plain words: "strong-15-twice-daily".</summary>
    public required string Id { get; init; }

    /// <summary>One line that tells it from the others.</summary>
    public required string Title { get; init; }

    /// <summary>Who was treated, and when it started.</summary>
    public required string Population { get; init; }

    /// <summary>Contractions in a session.</summary>
    public required Stated<int> Contractions { get; init; }

    /// <summary>Clock length of a session, where the paper gives time instead of contractions.</summary>
    public required Stated<Duration> SessionLength { get; init; }

    /// <summary>Time the current is on in one cycle.</summary>
    public required Stated<Duration> On { get; init; }

    /// <summary>Rest in one cycle.</summary>
    public required Stated<Duration> Off { get; init; }

    /// <summary>Rise at the start of the on-time.</summary>
    public required Stated<Duration> RampUp { get; init; }

    /// <summary>Fall at the end of the on-time.</summary>
    public required Stated<Duration> RampDown { get; init; }

    /// <summary>Whether the ramps lie inside the on-time.</summary>
    public required Stated<RampPlacement> Ramps { get; init; }

    /// <summary>Pulses or bursts a second.</summary>
    public required Stated<Frequency> Rate { get; init; }

    /// <summary>Pulse width; see <see cref="WidthIs"/>.</summary>
    public required Stated<PulseWidth> Width { get; init; }

    /// <summary>Whether the width is of one phase or of the whole pulse.</summary>
    public required Stated<WidthBasis> WidthIs { get; init; }

    /// <summary>Shape of the current.</summary>
    public required Stated<Waveform> Waveform { get; init; }

    /// <summary>Carrier of burst-modulated alternating current.</summary>
    public required Stated<Frequency> Carrier { get; init; }

    /// <summary>Share of a burst period in which the burst is on.</summary>
    public required Stated<Percentage> BurstDuty { get; init; }

    /// <summary>Pads, each of this size.</summary>
    public required Stated<PadSize> Pad { get; init; }

    /// <summary>Where the pads go and how the knee is held.</summary>
    public required Stated<string> Position { get; init; }

    /// <summary>Whether the stimulated contraction is to be held still (isometric).</summary>
    public required Stated<bool> Isometric { get; init; }

    /// <summary>How intensity is set, in words.</summary>
    public required Stated<string> Intensity { get; init; }

    /// <summary>Sessions a day.</summary>
    public required Stated<int> SessionsPerDay { get; init; }

    /// <summary>Days a week.</summary>
    public required Stated<int> DaysPerWeek { get; init; }

    /// <summary>Length of the course in weeks.</summary>
    public required Stated<int> Weeks { get; init; }

    /// <summary>The active work of both arms, in words.</summary>
    public required Stated<string> ActiveWork { get; init; }

    /// <summary>What came of it, in one sentence.</summary>
    public required string Outcome { get; init; }

    /// <summary>What the fields cannot hold: a range of which one end is entered, or what the publication leaves unclear; null for nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The publication.</summary>
    public required Source Source { get; init; }
}
