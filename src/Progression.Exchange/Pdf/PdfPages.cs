using System.Collections.Immutable;

namespace Progression.Exchange.Pdf;

/// <summary>Breaks the pieces of a document into pages.</summary>
internal static class PdfPages
{
    /// <summary>The pieces of each page with their tops.</summary>
    /// <param name="pieces">The pieces in their order.</param>
    /// <param name="top">Where a page begins.</param>
    /// <param name="bottom">Where it ends.</param>
    internal static ImmutableArray<ImmutableArray<(PdfPiece Piece, double Top)>> Of(ImmutableArray<PdfPiece> pieces, double top, double bottom)
    {
        List<List<(PdfPiece, double)>> pages = [[]];
        double at = top;
        foreach (ImmutableArray<PdfPiece> group in Groups(pieces, PdfTie.Kept).SelectMany(group => Fitting(group, bottom - top)))
        {
            if (pages[^1].Count > 0 && at + Height(group) > bottom + 0.01)
            {
                pages.Add([]);
                at = top;
            }

            foreach (PdfPiece piece in group)
            {
                if (pages[^1].Count == 0 && piece.IsGap)
                {
                    continue;
                }

                if (pages[^1].Count == 0 && piece.Over is { } over)
                {
                    pages[^1].Add((over, at));
                    at += over.Height;
                }

                pages[^1].Add((piece, at));
                at += piece.Height;
            }
        }

        return [.. pages.Select(page => page.ToImmutableArray())];
    }

    // What does not fit on a whole page is parted at its weaker ties, and then anywhere.
    private static IEnumerable<ImmutableArray<PdfPiece>> Fitting(ImmutableArray<PdfPiece> group, double room) =>
        Height(group) <= room ? [group]
        : Groups(group, PdfTie.Bound).SelectMany(part => Height(part) <= room ? [part] : part.Select(ImmutableArray.Create));

    private static IEnumerable<ImmutableArray<PdfPiece>> Groups(ImmutableArray<PdfPiece> pieces, PdfTie tie)
    {
        ImmutableArray<PdfPiece>.Builder group = ImmutableArray.CreateBuilder<PdfPiece>();
        foreach (PdfPiece piece in pieces)
        {
            group.Add(piece);
            if (piece.Tie < tie)
            {
                yield return group.DrainToImmutable();
            }
        }

        if (group.Count > 0)
        {
            yield return group.DrainToImmutable();
        }
    }

    private static double Height(ImmutableArray<PdfPiece> pieces) => pieces.Sum(piece => piece.Height);
}
