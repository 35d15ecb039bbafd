using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Tests.Actions;

/// <summary>A small screen for the tests of the mechanism: a lamp with a switch and a label to type.</summary>
internal sealed record Lamp(bool On = false, bool Naming = false, string Name = "", string Status = "")
{
    public static ScreenDefinition<Lamp> Screen { get; } = new()
    {
        Actions = new(lamp => lamp.Naming ? "naming" : "lamp",
        [
            Row("help", "lamp", ["F1", "?"], 1, lamp => lamp with { Status = "help" }),
            Row("light", "lamp", ["l", "Up"], 2, lamp => lamp with { On = true }, lamp => lamp.On ? "The lamp is on already." : null),
            Row("dark", "lamp", ["d", "Down"], 3, lamp => lamp with { On = false }, lamp => lamp.On ? null : "The lamp is dark already."),
            Row("name", "lamp", ["Enter"], 4, lamp => lamp with { Naming = true }),
            Row("done", "naming", ["Enter"], 1, lamp => lamp with { Naming = false }),
            Row("leave", "lamp", ["q"], 5, lamp => lamp) with { Do = lamp => Step.To(lamp, new Repaint(), new Ring(), new LeaveScreen()) },
            Row("six", "lamp", ["6"], 6, lamp => lamp),
            Row("seven", "lamp", ["7"], 7, lamp => lamp),
        ]),
        Draw = (lamp, size) => new([PictureRow.Of(lamp.On ? "░ on" : "─ dark", Ink.Stim), PictureRow.Of(lamp.Name, Ink.Field), PictureRow.Of(lamp.Status)], new(1, 0)),
        Say = (lamp, text) => lamp with { Status = text },
        Type = (lamp, text) => lamp.Naming ? lamp with { Name = lamp.Name + text } : null,
    };

    public static ScreenAction<Lamp> Row(
        string id, string mode, string[] keys, int? rank, Func<Lamp, Lamp> act, Func<Lamp, string?>? whyNot = null) =>
        new()
        {
            Id = id,
            Mode = mode,
            Keys = [.. keys],
            Group = "Lamp",
            Hint = id,
            Help = $"Does {id}.",
            HintRank = rank,
            WhyNot = whyNot ?? (_ => null),
            Do = lamp => Step.To(act(lamp)),
        };
}

internal sealed record Ring : ScreenEffect;
