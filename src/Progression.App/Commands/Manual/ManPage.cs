using System.Text;

namespace Progression.App.Commands.Manual;

/// <summary>The manual page, in the language of <c>man</c> (roff with the man macros), from the commands themselves.</summary>
internal static class ManPage
{
    private const string Before = """
        .SH DESCRIPTION
        On a terminal,
        .B progression
        opens the workbook: the list of cases, and for each case its plan as a grid of post\-op weeks by lanes. Without a terminal,
        give one of the commands below. Data goes to standard output, messages to standard error.
        .PP
        It plans and suggests; a licensed clinician decides. The surgeon's protocol, local protocols, the stimulator's own
        instructions and local law come first.
        """;

    private const string After = """
        .SH ENVIRONMENT
        .TP
        .B PROGRESSION_STORE
        The store's folder.
        .TP
        .B PROGRESSION_LIBRARY
        A folder with a clinic's own library files.
        .TP
        .B XDG_DATA_HOME
        Where a person's data is kept; the store is the folder
        .I progression
        in it, else in
        .IR ~/.local/share .
        .TP
        .B XDG_CONFIG_HOME
        Where a person's settings are kept, else in
        .IR ~/.config .
        .TP
        .B NO_COLOR
        When not empty: bold, underline and reverse only.
        .TP
        .B COLORTERM
        truecolor or 24bit: exact colours; otherwise the sixteen of the terminal.
        .TP
        .BR LC_ALL ", " LC_CTYPE ", " LANG
        The first that is set decides: without UTF\-8, seven\-bit letters only.
        .TP
        .B TERM
        With dumb, the workbook is not opened.
        .SH FILES
        .TP
        .I plans.journal
        The record, in the store's folder: every saved revision, one on a line. Keep copies of this one.
        .TP
        .I plans.db
        An index made from it, which may be deleted and is then made again.
        .TP
        .I drafts/
        Unsaved work, offered again at the next start.
        .TP
        .I progression/settings.yaml
        A person's own settings of colours, symbols, wheel, blanking and line mode, in the folder of settings.
        .TP
        .I progression/columns.json
        What a person said the columns of other programs' tables are, by their headers; nothing of a patient.
        """;

    /// <summary>The page.</summary>
    /// <param name="root">The program's commands.</param>
    /// <param name="version">The program's version.</param>
    public static string Of(CommandPage root, string version)
    {
        StringBuilder page = new();
        page.Append(".\\\" Made by \"progression manual\"; a test holds it to the commands.\n");
        page.Append($".TH PROGRESSION 1 \"\" \"progression {version}\" \"User commands\"\n.SH NAME\nprogression \\- plan rehabilitation of a knee after joint replacement\n");
        page.Append(".SH SYNOPSIS\n.B progression\n");
        foreach (CommandPage command in root.All.Where(command => command.Path.Length > 0 && command.Children.IsEmpty))
        {
            page.Append($".br\n{Synopsis(command)}\n");
        }

        page.Append(Before).Append("\n.SH OPTIONS\n");
        Words(page, root.Options);
        page.Append(".SH COMMANDS\n");
        foreach (CommandPage command in root.All.Where(command => command.Path.Length > 0))
        {
            Section(page, command, root);
        }

        return page.Append(".SH EXIT STATUS\n").Append(Plain(ExitCode.Help)).Append(After).Append('\n').ToString();
    }

    private static string Synopsis(CommandPage command) =>
        $".B progression {Safe(command.Path)}"
        + (command.Options.IsEmpty ? "" : "\n[\\fIoptions\\fR]")
        + string.Concat(command.Arguments.Select(argument => argument.IsRequired ? $"\n\\fI{Safe(argument.Value!)}\\fR" : $"\n[\\fI{Safe(argument.Value!)}\\fR]"));

    private static void Section(StringBuilder page, CommandPage command, CommandPage root)
    {
        page.Append($".SS {Safe(command.Path)}\n{Line(command.Description)}\n");
        Words(page, [.. command.Arguments, .. command.Options.Where(option => !root.Options.Any(known => known.Names.SequenceEqual(option.Names)))]);
        if (command.Closing.Length > 0)
        {
            page.Append(".PP\n").Append(Plain(command.Closing));
        }
    }

    private static void Words(StringBuilder page, IEnumerable<GivenWord> words)
    {
        foreach (GivenWord word in words)
        {
            string names = string.Join(", ", word.Names.Select(name => $"\\fB{Safe(name)}\\fR"));
            string value = word.Value is null ? "" : $"\\fI{Safe(word.Value)}\\fR";
            page.Append($".TP\n{string.Join(' ', new[] { names, value }.Where(text => text.Length > 0))}\n{Line(word.Description + (word.IsRequired && word.Names.Length > 0 ? " Required." : ""))}\n");
        }
    }

    private static string Plain(string text) => ".nf\n" + string.Concat(text.Split('\n').Select(line => Line(line.TrimEnd('\r')) + "\n")) + ".fi\n";

    // A line that begins with a dot or an apostrophe would be a command of roff.
    private static string Line(string text) => (text.StartsWith('.') || text.StartsWith('\'') ? "\\&" : "") + Safe(text);

    private static string Safe(string text) => text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
}
