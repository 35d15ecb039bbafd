namespace Progression.App.Intake;

/// <summary>What the keys of the screening mean at the moment.</summary>
public enum ScreeningMode
{
    /// <summary>Answering the questions.</summary>
    Questions,

    /// <summary>Asked whether all that is left was asked and answered no.</summary>
    Rest,

    /// <summary>Typing a clearance.</summary>
    Clearance,

    /// <summary>Typing the day on which it was asked.</summary>
    Day,

    /// <summary>Reading the help page.</summary>
    Help,
}
