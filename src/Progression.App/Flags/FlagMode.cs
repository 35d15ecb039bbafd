namespace Progression.App.Flags;

/// <summary>What the keys of the red-flag checklist mean at the moment.</summary>
public enum FlagMode
{
    /// <summary>Answering the questions.</summary>
    Questions,

    /// <summary>Typing the note that closes a flag.</summary>
    Note,

    /// <summary>Reading the help page.</summary>
    Help,
}
