namespace Progression.App.Intake;

/// <summary>What the keys of the form of a case mean at the moment.</summary>
public enum IntakeMode
{
    /// <summary>Typing the case.</summary>
    Form,

    /// <summary>Going through the regimens.</summary>
    Regimens,

    /// <summary>Reading the help page.</summary>
    Help,
}
