using Progression.App.Actions;

namespace Progression.App.Plain;

/// <summary>Runs line mode over a reader and a writer: a terminal without screens, a screen reader, a script.</summary>
public static class PlainSession
{
    /// <summary>The exit code when the input ended while something was unsaved; it is kept as a draft.</summary>
    public const int EndedUnsaved = 1;

    /// <summary>The longest line taken.</summary>
    public const int Longest = 4000;

    /// <summary>Talks until the last screen is left or the input ends.</summary>
    /// <param name="screens">The screens.</param>
    /// <param name="input">What the person types.</param>
    /// <param name="output">What is said; only printable text and line feeds are written.</param>
    /// <param name="sevenBit">Whether the locale cannot show more than seven bits.</param>
    /// <returns>0, or <see cref="EndedUnsaved"/>.</returns>
    public static int Run(ScreenStack screens, TextReader input, TextWriter output, bool sevenBit)
    {
        ArgumentNullException.ThrowIfNull(screens);
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        PlainTalk talk = new(screens);
        Say(talk.Begin(), output, sevenBit);
        while (!talk.IsOver)
        {
            if (input.ReadLine() is not { } line)
            {
                return talk.End() ? EndedUnsaved : 0;
            }

            // What others saved is heard with the answer to the next line, never in the middle of a person's own.
            if (screens.Look() is { } news)
            {
                screens.Take(news);
            }

            Say(line.Length > Longest ? [$"The line was too long and not taken: at most {Longest} letters."] : talk.Hear(line), output, sevenBit);
            // A line takes a person seconds: whatever is half done is on disk before the next.
            screens.Keep();
        }

        return 0;
    }

    private static void Say(IReadOnlyList<string> lines, TextWriter output, bool sevenBit)
    {
        foreach (string line in lines)
        {
            output.Write(PlainLetters.Line(line, sevenBit) + "\n");
        }

        output.Flush();
    }
}
