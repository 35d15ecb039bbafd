using System.Collections.Immutable;
using System.CommandLine;

namespace Progression.App.Commands.Manual;

/// <summary>One command as its manual and the shells' completion tell it, read from the command itself.</summary>
/// <param name="Path">The words that name it, "library list"; empty for the program itself.</param>
/// <param name="Description">What it does.</param>
/// <param name="Arguments">What follows its words.</param>
/// <param name="Options">Its options, those of every command last.</param>
/// <param name="Children">The commands below it.</param>
/// <param name="Closing">Examples and notes; empty where there are none.</param>
internal sealed record CommandPage(
    string Path, string Description, ImmutableArray<GivenWord> Arguments, ImmutableArray<GivenWord> Options, ImmutableArray<CommandPage> Children, string Closing)
{
    /// <summary>The last of its words.</summary>
    public string Name => Path.Split(' ')[^1];

    /// <summary>It and every command below it, each before those below it.</summary>
    public IEnumerable<CommandPage> All => Children.SelectMany(child => child.All).Prepend(this);

    /// <summary>The whole tree.</summary>
    public static CommandPage Of(Command root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return Of(root, "", []);
    }

    private static CommandPage Of(Command command, string path, ImmutableArray<GivenWord> fromAbove)
    {
        ImmutableArray<GivenWord> everywhere = [.. command.Options.Where(option => option.Recursive && !option.Hidden).Select(GivenWord.Of), .. fromAbove];
        return new(
            path,
            command.Description ?? "",
            [.. command.Arguments.Where(argument => !argument.Hidden).Select(GivenWord.Of)],
            [.. command.Options.Where(option => !option.Recursive && !option.Hidden).Select(GivenWord.Of), .. everywhere],
            [.. command.Subcommands.Where(child => !child.Hidden).Select(child => Of(child, path.Length == 0 ? child.Name : $"{path} {child.Name}", everywhere))],
            (command as ExampledCommand)?.Closing.Replace(ExitCode.Help, "", StringComparison.Ordinal).Trim() ?? "");
    }
}
