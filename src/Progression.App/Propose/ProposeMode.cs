namespace Progression.App.Propose;

/// <summary>What the keys of the proposal mean at the moment.</summary>
public enum ProposeMode
{
    /// <summary>Going through the changes.</summary>
    List,

    /// <summary>Typing why nothing is taken.</summary>
    Reason,

    /// <summary>Reading why a change is proposed.</summary>
    Why,

    /// <summary>Reading every rule of the verdict.</summary>
    Verdict,

    /// <summary>Reading what is expected of the milestones.</summary>
    Outlook,

    /// <summary>Reading the help page.</summary>
    Help,
}
