using System.Collections.Immutable;
using System.Text;

namespace Progression.App.Commands.Manual;

/// <summary>Completion of the command line in bash.</summary>
internal static class BashScript
{
    private const string Foot = """
          esac
          if [[ $cur == -* ]]; then words=$options; fi
          COMPREPLY=($(compgen -W "$words" -- "$cur"))
          if [[ $cur != -* && -n $files ]]; then compopt -o filenames 2>/dev/null; COMPREPLY+=($(compgen "$files" -- "$cur")); fi
        }
        complete -F _progression progression
        """;

    public static string Of(CommandPage root)
    {
        ArgumentNullException.ThrowIfNull(root);
        StringBuilder script = new("""
            # Completion for bash, made by: progression completion bash
            _progression() {
              local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]} path="" words="" options="" files="" word
              COMPREPLY=()
              for word in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
                case "${path:+$path }$word" in

            """);
        script.Append($"      {string.Join('|', root.All.Skip(1).Select(page => $"\"{page.Path}\""))}) path=\"${{path:+$path }}$word\" ;;\n    esac\n  done\n  case \"$path:$prev\" in\n");
        foreach (CommandPage page in root.All)
        {
            foreach (GivenWord option in page.Options.Where(option => option.Value is not null))
            {
                script.Append($"    {string.Join('|', option.Names.Select(name => $"\"{page.Path}:{name}\""))}) {Value(option)}return ;;\n");
            }
        }

        script.Append("  esac\n  case $path in\n");
        foreach (CommandPage page in root.All)
        {
            script.Append($"    \"{page.Path}\") words=\"{Next(page)}\" options=\"{string.Join(' ', page.Options.SelectMany(option => option.Names))}\"{Files(page)} ;;\n");
        }

        return script.Append(Foot).ToString().ReplaceLineEndings("\n");
    }

    private static string Next(CommandPage page) =>
        string.Join(' ', (ImmutableArray<string>)[.. page.Children.Select(child => child.Name), .. page.Arguments.SelectMany(argument => argument.Choices)]);

    private static string Files(CommandPage page) =>
        page.Arguments.Any(argument => argument.IsFile) ? " files=-f" : page.Arguments.Any(argument => argument.IsFolder) ? " files=-d" : "";

    private static string Value(GivenWord option) =>
        option.IsFolder ? "compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen -d -- \"$cur\")); "
        : option.IsFile ? "compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen -f -- \"$cur\")); "
        : option.Choices.IsEmpty ? ""
        : $"COMPREPLY=($(compgen -W \"{string.Join(' ', option.Choices)}\" -- \"$cur\")); ";
}
