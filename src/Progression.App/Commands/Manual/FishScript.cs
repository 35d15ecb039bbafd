using System.Text;

namespace Progression.App.Commands.Manual;

/// <summary>Completion of the command line in fish.</summary>
internal static class FishScript
{
    public static string Of(CommandPage root)
    {
        ArgumentNullException.ThrowIfNull(root);
        StringBuilder script = new("# Completion for fish, made by: progression completion fish\n");
        script.Append($"set -g __progression_commands {string.Join(' ', root.All.Skip(1).Select(page => $"'{page.Path}'"))}\n");
        script.Append("""
            function __progression_at --description 'Whether the words typed so far name this command'
                set -l path ''
                for word in (commandline -opc)[2..-1]
                    set -l longer (string trim -- "$path $word")
                    contains -- "$longer" $__progression_commands; and set path $longer
                end
                test "$path" = "$argv[1]"
            end
            complete -c progression -f

            """.ReplaceLineEndings("\n"));
        foreach (CommandPage page in root.All)
        {
            string at = $"complete -c progression -n \"__progression_at '{page.Path}'\"";
            foreach (CommandPage child in page.Children)
            {
                script.Append($"{at} -a {child.Name} -d '{Safe(child.Description)}'\n");
            }

            foreach (GivenWord argument in page.Arguments)
            {
                script.Append(Values(argument) is { Length: > 0 } values ? $"{at}{values} -d '{Safe(argument.Description)}'\n" : "");
            }

            foreach (GivenWord option in page.Options)
            {
                string names = string.Concat(option.Names.Select(name => name.StartsWith("--", StringComparison.Ordinal) ? $" -l {name[2..]}" : $" -s {name[1..]}"));
                script.Append($"{at}{names}{(option.Value is null ? "" : " -x" + Values(option))} -d '{Safe(option.Description)}'\n");
            }
        }

        return script.ToString().TrimEnd();
    }

    private static string Values(GivenWord word) =>
        word.IsFolder ? " -a '(__fish_complete_directories)'" : word.IsFile ? " -a '(__fish_complete_path)'" : word.Choices.IsEmpty ? "" : $" -a '{string.Join(' ', word.Choices)}'";

    private static string Safe(string text) => text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal);
}
