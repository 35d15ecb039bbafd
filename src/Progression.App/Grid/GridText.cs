using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>The grid as plain text, for a pipe or a printer: the same layout as on screen, without inks and without a cursor.</summary>
public static class GridText
{
    /// <summary>The narrowest text grid.</summary>
    public const int Narrowest = 40;

    /// <summary>The plan's whole grid.</summary>
    /// <param name="desk">What the grid reads beside the plan.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="width">Columns, at least <see cref="Narrowest"/>; more weeks than fit follow in further blocks.</param>
    /// <param name="sevenBit">Whether only seven-bit letters may be used.</param>
    public static string Of(PlanDesk desk, PlanRevision plan, int width, bool sevenBit = false)
    {
        GridState state = GridState.Open(desk, plan);
        string text = GridSheet.Whole(state, width).Text;
        return sevenBit ? string.Join('\n', text.Split('\n').Select(SevenBit.Of)) : text;
    }
}
