namespace Progression.App.Pictures;

/// <summary>
/// What a piece of text is, not how it looks: the shell turns each ink into colour, bold, reverse or nothing. An ink never
/// carries a meaning that the characters do not carry too.
/// </summary>
public enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>Text of less weight: units, past weeks, rules between bands.</summary>
    Quiet,

    /// <summary>Text that leads the eye: names of lanes and parts.</summary>
    Strong,

    /// <summary>The cell, line or field under the cursor.</summary>
    Chosen,

    /// <summary>The present week.</summary>
    Today,

    /// <summary>A goal or a measured value in a milestone lane.</summary>
    Milestone,

    /// <summary>A stimulation phase or dose.</summary>
    Stim,

    /// <summary>An exercise and its dose.</summary>
    Work,

    /// <summary>A computed check: pairing, load, time.</summary>
    Check,

    /// <summary>A safety stop.</summary>
    Stop,

    /// <summary>A warning.</summary>
    Warning,

    /// <summary>A note.</summary>
    Note,

    /// <summary>Text a person is typing.</summary>
    Field,
}
