using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads the notes by which red flags were closed.</summary>
internal static class FlagNoteFields
{
    /// <summary>The notes, oldest first; several of one day in the order of the file.</summary>
    public static ImmutableArray<FlagNote> Read(Fields top, CaseReading reading) =>
        [.. top.Maps("flag_notes", Need.Optional).Select(fields => One(fields, reading)).OfType<FlagNote>().OrderBy(note => note.On)];

    private static FlagNote? One(Fields fields, CaseReading reading)
    {
        string? flag = fields.OneOf("flag", Need.Required, reading.Library.RedFlags.Select(each => each.Id));
        DateOnly? on = fields.Date("on", Need.Required, reading.SinceOperation);
        string? by = fields.Text("by", Need.Required);
        string? text = fields.Text("text", Need.Required, 300);
        fields.Done();
        return flag is not null && on is DateOnly day && by is not null && text is not null ? new FlagNote(flag, day, by, text) : null;
    }
}
