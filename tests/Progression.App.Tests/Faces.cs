using System.Text;
using Progression.App.Pictures;
using Progression.App.Shell;

namespace Progression.App.Tests;

/// <summary>Compares a picture with committed files: in monochrome its characters alone, in colour the characters with what each part is drawn in.</summary>
internal static class Faces
{
    public static void Match(Picture picture, string name)
    {
        Snapshot.Match(picture.Text, name);
        Snapshot.Match(InColour(picture), name + "-colour");
    }

    // A line of the picture, then where in it each colour begins.
    private static string InColour(Picture picture)
    {
        StringBuilder text = new();
        foreach (PictureRow row in picture.Rows)
        {
            text.Append(row.Text.TrimEnd()).Append('\n');
            List<string> parts = [];
            int at = 0;
            foreach (TextSpan span in row.Spans)
            {
                if (span.Ink != Ink.Plain && span.Text.Trim().Length > 0)
                {
                    Terminal.Gui.Drawing.Attribute drawn = InkColours.Of(span.Ink, TerminalColours.Sixteen);
                    parts.Add($"{at}:{drawn.Foreground}/{drawn.Background}{(drawn.Style == Terminal.Gui.Drawing.TextStyle.None ? "" : "/" + drawn.Style)}");
                }

                at += span.Text.Length;
            }

            text.Append(parts.Count == 0 ? "" : $"    {string.Join(' ', parts)}\n");
        }

        return text.ToString();
    }
}
