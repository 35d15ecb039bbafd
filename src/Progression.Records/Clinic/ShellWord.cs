namespace Progression.Records.Clinic;

/// <summary>A word of a command that somebody may copy into a shell.</summary>
internal static class ShellWord
{
    /// <summary>The text as one word, quoted where a shell would read anything into it.</summary>
    public static string Of(string text) => text.Length > 0 && text.All(letter => char.IsAsciiLetterOrDigit(letter) || "/._-+=:@%,".Contains(letter, StringComparison.Ordinal))
        ? text
        : $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
