using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>Says in our words where a text stopped being YAML. The parser's own message is for programmers and may quote the text unsafely.</summary>
internal static class YamlSyntax
{
    /// <summary>Adds the problem of the place where the parser gave up.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="line">The parser's line, counted from 1; may lie past the last line.</param>
    /// <param name="problems">Where the problem goes.</param>
    public static void Explain(string text, int line, FileProblems problems)
    {
        string[] lines = text.Split('\n');
        int last = Array.FindLastIndex(lines, each => !string.IsNullOrWhiteSpace(each)) + 1;
        int at = Math.Clamp(line, 1, Math.Max(1, last));
        // A tab that should have been spaces is often noticed only as a clash with the line before it.
        at += !BeginsWithTab(at) && BeginsWithTab(at + 1) ? 1 : 0;
        string found = lines[at - 1].Trim();
        if (BeginsWithTab(at))
        {
            Add("A tab stands where the line is indented.", "spaces for indentation", "a tab before " + found);
        }
        else if (line >= last)
        {
            Add("The file ends in the middle of something; it may be cut short.", "every quote and bracket closed, every key followed by a colon", found);
        }
        else
        {
            Add("The file cannot be understood here.", "YAML; look for a quote, colon, bracket or indent amiss on this line or just before", found);
        }

        bool BeginsWithTab(int number) => number <= lines.Length && lines[number - 1].TrimStart(' ').StartsWith('\t');

        void Add(string wrong, string allowed, string what) => problems.Add(at, new Problem("", wrong, allowed, what));
    }
}
