namespace Progression.Core.Library;

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Text">The citation, or for common practice what the practice is.</param>
/// <param name="Standing">How well it is founded.</param>
public sealed record Source(string Text, Standing Standing)
{
    /// <summary>The standing in words: "seen", "derived", "from memory", "common practice, no source".</summary>
    public string StandingWords => Words(Standing);

    /// <summary>The citation followed by its standing in brackets.</summary>
    public override string ToString() => $"{Text} [{StandingWords}]";

    /// <summary>A standing in words.</summary>
    public static string Words(Standing standing) => standing switch
    {
        Standing.Seen => "seen",
        Standing.Derived => "derived",
        Standing.FromMemory => "from memory",
        _ => "common practice, no source",
    };
}
