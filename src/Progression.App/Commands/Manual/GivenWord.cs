using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;

namespace Progression.App.Commands.Manual;

/// <summary>An option or an argument as it is typed.</summary>
/// <param name="Names">The option's names, the longest first; empty for an argument.</param>
/// <param name="Value">What is to be typed as its value, such as FILE; null for an option without a value.</param>
/// <param name="Description">What it is.</param>
/// <param name="IsRequired">Whether the command cannot do without it.</param>
/// <param name="Choices">The only values there are; empty when it may be others.</param>
internal sealed record GivenWord(ImmutableArray<string> Names, string? Value, string Description, bool IsRequired, ImmutableArray<string> Choices)
{
    /// <summary>Whether the value is a folder.</summary>
    public bool IsFolder => Value is "FOLDER" or "folder";

    /// <summary>Whether the value is, or may be, a file.</summary>
    public bool IsFile => Value?.Split('|').Contains("FILE") == true;

    public static GivenWord Of(Option option)
    {
        ArgumentNullException.ThrowIfNull(option);
        bool hasValue = option.Arity.MaximumNumberOfValues > 0 && option.ValueType != typeof(bool);
        ImmutableArray<string> names = [.. option.Aliases.Append(option.Name).Where(name => name[0] == '-' && name != "-?").OrderByDescending(name => name.Length)];
        string? value = hasValue ? option.HelpName ?? "VALUE" : null;
        return new(names, value, option.Description ?? "", option.Required, hasValue ? Listed(option.GetCompletions(CompletionContext.Empty), value) : []);
    }

    public static GivenWord Of(Argument argument)
    {
        ArgumentNullException.ThrowIfNull(argument);
        string value = argument.HelpName ?? argument.Name;
        return new([], value, argument.Description ?? "", !argument.HasDefaultValue && argument.Arity.MinimumNumberOfValues > 0, Listed(argument.GetCompletions(CompletionContext.Empty), value));
    }

    /// <summary>The values a command accepts, or those its help names: words in small letters with bars between them.</summary>
    private static ImmutableArray<string> Listed(IEnumerable<CompletionItem> accepted, string? value)
    {
        ImmutableArray<string> labels = [.. accepted.Select(item => item.Label).Distinct()];
        return labels.IsEmpty && value is not null && value.Contains('|') && value.All(letter => char.IsAsciiLetterLower(letter) || letter is '|' or '-')
            ? [.. value.Split('|')]
            : labels;
    }
}
