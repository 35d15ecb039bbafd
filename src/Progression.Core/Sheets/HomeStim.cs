using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Sheets;

/// <summary>The stimulator's part of a home sheet.</summary>
internal static class HomeStim
{
    public static IEnumerable<Block> Of(HomeSheetOrder order, int week)
    {
        HomeWords words = order.Words;
        Block heading = new Block.Heading(2, words.Text("labels.stim"));
        if (order.Plan.ContentAt(Lanes.Stim, week) is not StimCell { Contractions: > 0 } cell || cell.Days.Count == 0)
        {
            return [heading, new Block.Paragraph(words.Text("labels.stim_rest"))];
        }

        return
        [
            heading,
            .. Picture(order),
            new Block.Points([.. words.List("stim.before"), .. Position(order, week), .. Pads(order), .. Go(order, cell), .. words.List("stim.after")], InOrder: true),
            new Block.Paragraph(words.Text("labels.done")),
            HomeSheet.Ticks(order, week, (cell.Days, cell.SessionsPerDay)),
            new Block.Points(words.List("stim.never"), InOrder: false),
        ];
    }

    private static IEnumerable<Block> Picture(HomeSheetOrder order)
    {
        Side side = order.Patient.Operation.Side;
        string words = order.Words.Text("picture.words", ("side", HomeSheet.SideWord(order)));
        return [new Block.Picture(ThighPicture.Of(side), words), new Block.Points(order.Words.List("picture.legend"), InOrder: true)];
    }

    // Held in a strap, the knee is bent; a set is done with the leg out. The plan's own exercise along with stim decides.
    private static IEnumerable<string> Position(HomeSheetOrder order, int week) =>
        Along(order.Plan, week) is { } along && order.Library.Exercises.TryGetValue(along.Exercise, out Exercise? exercise)
            ? [order.Words.Text(exercise.Resisted ? "stim.position_seated" : "stim.position_lying")]
            : [order.Words.Text("stim.position_lying")];

    private static ActiveCell? Along(PlanRevision plan, int week) => plan.Lanes
        .Where(lane => lane.Slot == ActiveSlot.QuadsWithStim).Select(lane => plan.ContentAt(lane.Id, week)).OfType<ActiveCell>().FirstOrDefault();

    private static ImmutableArray<string> Pads(HomeSheetOrder order)
    {
        PadSize? pad = order.Patient.Pads ?? (Regimen(order) is { Pad.IsOpen: false } regimen ? regimen.Pad.Value : null);
        ImmutableArray<string> all = order.Words.List("stim.pads", ("pad", pad is null ? "" : Size(pad, order.Words)));
        return pad is null ? [.. all.Zip(order.Words.Lists["stim.pads"]).Where(one => !one.Second.Contains("{pad}", StringComparison.Ordinal)).Select(one => one.First)] : all;
    }

    private static string Size(PadSize pad, HomeWords words) => pad.Height is { } height
        ? $"{words.Number(pad.Width.Centimetres)} x {words.Number(height.Centimetres)} cm"
        : $"{words.Number(pad.Width.Centimetres)} cm";

    // A cycle that the regimen leaves open is not told; the stimulator was set at the clinic.
    private static IEnumerable<string> Go(HomeSheetOrder order, StimCell cell)
    {
        HomeWords words = order.Words;
        Regimen? regimen = Regimen(order);
        bool isTimed = regimen is { On.IsOpen: false, Off.IsOpen: false };
        string sessions = cell.SessionsPerDay == 1 ? words.Text("stim.once") : words.Text("stim.times", ("times", HomeSheet.Whole(cell.SessionsPerDay)));
        ImmutableArray<string> filled = words.List(
            "stim.go",
            ("on", isTimed ? words.Number(regimen!.On.Value.Seconds) : ""),
            ("off", isTimed ? words.Number(regimen!.Off.Value.Seconds) : ""),
            ("contractions", HomeSheet.Whole(cell.Contractions)),
            ("sessions", sessions));
        return filled.Zip(words.Lists["stim.go"]).Where(one => isTimed || !one.Second.Contains("{on}", StringComparison.Ordinal)).Select(one => one.First);
    }

    private static Regimen? Regimen(HomeSheetOrder order) => order.Library.Regimens.GetValueOrDefault(order.Plan.Regimen);
}
