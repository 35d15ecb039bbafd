using System.Text;

namespace Progression.App.Commands.Manual;

/// <summary>Completion of the command line in zsh: one function for each command.</summary>
internal static class ZshScript
{
    public static string Of(CommandPage root)
    {
        ArgumentNullException.ThrowIfNull(root);
        StringBuilder script = new("#compdef progression\n# Completion for zsh, made by: progression completion zsh\n");
        foreach (CommandPage page in root.All)
        {
            script.Append($"\n{Function(page)}() {{\n  local context state state_descr line\n  typeset -A opt_args\n  _arguments -C \\\n");
            foreach (GivenWord option in page.Options)
            {
                script.Append($"    {Option(option)} \\\n");
            }

            script.Append(page.Children.IsEmpty ? Arguments(page) : Commands(page)).Append("}\n");
        }

        return script.Append("\nif [ \"$funcstack[1]\" = _progression ]; then _progression \"$@\"; else compdef _progression progression; fi").ToString();
    }

    private static string Function(CommandPage page) => "_progression" + (page.Path.Length == 0 ? "" : "_" + page.Path.Replace(' ', '_'));

    private static string Option(GivenWord option)
    {
        string value = option.Value is null ? "" : $":{Safe(option.Value)}:{Values(option)}";
        string text = $"[{Safe(option.Description)}]{value}";
        return option.Names.Length == 1
            ? $"'{option.Names[0]}{text}'"
            : $"'({string.Join(' ', option.Names)})'{{{string.Join(',', option.Names)}}}'{text}'";
    }

    private static string Arguments(CommandPage page) =>
        string.Concat(page.Arguments.Select((argument, at) => $"    '{at + 1}:{Safe(argument.Value!)}:{Values(argument)}' \\\n")) + "    && return 0\n";

    private static string Commands(CommandPage page) =>
        "    '1: :->command' '*:: :->words' && return 0\n  case $state in\n    command) local -a known; known=(\n"
        + string.Concat(page.Children.Select(child => $"      '{child.Name}:{Safe(child.Description)}'\n"))
        + "      ); _describe -t commands command known ;;\n    words) case $words[1] in\n"
        + string.Concat(page.Children.Select(child => $"      {child.Name}) {Function(child)} ;;\n"))
        + "    esac ;;\n  esac\n";

    private static string Values(GivenWord word) =>
        word.IsFolder ? "_files -/" : word.IsFile ? "_files" : word.Choices.IsEmpty ? " " : $"({string.Join(' ', word.Choices)})";

    private static string Safe(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "'\\''", StringComparison.Ordinal).Replace("[", "\\[", StringComparison.Ordinal)
            .Replace("]", "\\]", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal);
}
