namespace Progression.App.Assess;

/// <summary>What the keys of the assessment mean at the moment.</summary>
public enum AssessMode
{
    /// <summary>Typing the visit.</summary>
    Form,

    /// <summary>Asked how an extension deficit is written.</summary>
    Sign,

    /// <summary>Asked about the day of the visit.</summary>
    Visit,

    /// <summary>Typing the device, position, rater or steps of one reading.</summary>
    Detail,

    /// <summary>Typing who corrects a visit, and why.</summary>
    Reason,

    /// <summary>Asked about a value that is odd.</summary>
    Query,

    /// <summary>Reading the help page.</summary>
    Help,
}
