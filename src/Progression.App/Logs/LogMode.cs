namespace Progression.App.Logs;

/// <summary>What the keys of the session log mean at the moment.</summary>
public enum LogMode
{
    /// <summary>Typing the session.</summary>
    Form,

    /// <summary>Asked whether a second session of the day is meant.</summary>
    Again,

    /// <summary>Reading the help page.</summary>
    Help,
}
