using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Plain;

/// <summary>What a person knows of the screen in use, as line mode has told it. What differs from the next one is what has to be said.</summary>
/// <param name="Place">Where they are.</param>
/// <param name="Told">What was told last.</param>
/// <param name="Here">What is under the cursor.</param>
internal sealed record PlainFace(ScreenPlace Place, string Told, IReadOnlyList<string> Here)
{
    /// <summary>The face of a screen.</summary>
    public static PlainFace Of(Frame frame) => new(frame.Where, frame.Asks is { Refused.Length: > 0 } ? "" : frame.Told, frame.TakesText && frame.Asks is null ? [] : frame.Here);

    /// <summary>What to say to somebody who knew another face; null for somebody who comes new.</summary>
    public IEnumerable<string> Since(PlainFace? before, IReadOnlyList<string> opening)
    {
        bool isNew = before is null || (before.Place.Screen, before.Place.Whose) != (Place.Screen, Place.Whose);
        if (isNew)
        {
            return [.. Where(), .. opening, .. Said(Untold), .. Here];
        }

        string[] said =
        [
            .. Told != before!.Told ? Said(Untold) : [],
            .. Place.Kept != before.Place.Kept ? Said(Place.Kept) : [],
            .. Here.SequenceEqual(before.Here) ? [] : Here,
        ];
        return said.Length > 0 ? said : Said(Told);
    }

    // What was told is not said twice when it stands under the cursor too; a finding has its mark in front there.
    private string Untold => Told.Length > 0 && Here.Any(line => line.Length > 0 && Told.EndsWith(line, StringComparison.Ordinal)) ? "" : Told;

    /// <summary>Where the person is, in a line or two.</summary>
    public IEnumerable<string> Where()
    {
        yield return string.Join(". ", new[] { Place.Screen, Place.Whose, Place.What }.Where(part => part.Length > 0)) + ".";
        foreach (string kept in Said(Place.Kept))
        {
            yield return kept;
        }
    }

    private static IEnumerable<string> Said(string text) => text.Length == 0 ? [] : [char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] is '.' or '?' or '!' ? "" : ".")];
}
