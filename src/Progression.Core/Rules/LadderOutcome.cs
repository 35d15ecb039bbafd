namespace Progression.Core.Rules;

/// <summary>What the ladder rules come to, the strongest first. The strongest one that applies wins.</summary>
public enum LadderOutcome
{
    /// <summary>A red flag: show the checklist, follow the clinic's protocol, no step until it is closed.</summary>
    ReferAndLock,

    /// <summary>Stim may stop; strengthening goes on.</summary>
    Stop,

    /// <summary>Back up one rung.</summary>
    StepBack,

    /// <summary>Stay on the rung.</summary>
    Hold,

    /// <summary>Down one rung.</summary>
    StepDown,

    /// <summary>Something must be measured or asked first.</summary>
    NotEnoughInformation,
}
