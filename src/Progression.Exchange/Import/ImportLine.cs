namespace Progression.Exchange.Import;

/// <summary>What becomes of one thing found in a file.</summary>
public enum ImportFate
{
    /// <summary>It would come in.</summary>
    ComesIn,

    /// <summary>The case has it already, with the same value: it is left out.</summary>
    IsThere,

    /// <summary>It stands further up in the file, with the same value: it is taken once.</summary>
    Repeated,
}

/// <summary>One thing found in a file, as a preview shows it.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Visit">The day, and for a visit what it is: "2026-03-05, week 5".</param>
/// <param name="What">What it is: the measure's name, "session".</param>
/// <param name="Value">Its value in words.</param>
/// <param name="Fate">What becomes of it.</param>
public sealed record ImportLine(ImportPlace Place, string Visit, string What, string Value, ImportFate Fate);
