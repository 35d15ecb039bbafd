using System.Collections.Immutable;
using System.CommandLine;
using Progression.Core.Library;
using Progression.Core.Sheets;
using Progression.Records.Words;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression words</c>: the plain words of the home sheet, to start another language from; and what a language file lacks.</summary>
internal sealed class WordsCommand(CommandOutput output, LibraryPlace libraries)
{
    internal Command Build() => new("words", "Shows the plain words of the home sheet, and checks the file of another language.") { Show(), Check() };

    private ExampledCommand Show()
    {
        ExampledCommand show = new("show", "Prints the English words as a file, to put another language's in their place.", """
            Example:
              progression words show > home-xx.yaml
            """);
        show.SetAction(_ =>
        {
            output.Data(HomeWordsReader.EnglishFile().TrimEnd());
            return ExitCode.Good;
        });
        return show;
    }

    private ExampledCommand Check()
    {
        Argument<string> file = new("file") { Description = "The file of a language.", HelpName = "FILE" };
        ExampledCommand check = new("check", "Tells what a language file lacks, has too much or has left in English.", $"""
            The reading level is checked for English alone: the measure is not made for other languages.

            Example:
              progression words check home-xx.yaml

            {ExitCode.Help}
            """)
        { file, libraries.Option };
        check.SetAction(line => Run(line.GetRequiredValue(file), line));
        return check;
    }

    private int Run(string path, ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("words check", line);
        if (library is null)
        {
            return code;
        }

        (HomeWords? words, ImmutableArray<FileProblem> problems) = HomeWordsReader.AsFarAsItGoes(path);
        foreach (FileProblem problem in problems)
        {
            output.Message(problem.ToString());
        }

        if (words is null)
        {
            return File.Exists(path) ? ExitCode.BadData : ExitCode.NoInput;
        }

        ImmutableArray<string> lacking = HomeWordsCheck.Lacking(words, HomeWordsReader.English(), [.. library.Exercises.Keys]);
        foreach (string told in lacking)
        {
            output.Data(told);
        }

        (string level, bool isTooHard) = HomeWordsCheck.Level(words);
        output.Data(level);
        output.Data(!problems.IsEmpty ? "The file is refused until what is wrong is mended." : lacking.IsEmpty ? "Nothing is missing and nothing too much." : "The file can be used as it is.");
        return !problems.IsEmpty ? ExitCode.BadData : lacking.IsEmpty && !isTooHard ? ExitCode.Good : ExitCode.Warning;
    }
}
