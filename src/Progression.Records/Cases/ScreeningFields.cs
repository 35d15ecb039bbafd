using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads the screening for stim. An answer is one word, or a map of the answer with a clearance.</summary>
internal static class ScreeningFields
{
    /// <summary>The screening; not done when the map is missing.</summary>
    public static Screening Read(Fields top, CaseReading reading)
    {
        if (top.Map("screening", Need.Optional) is not { } fields)
        {
            return Screening.NotDone;
        }

        DateOnly? date = fields.Date("date", Need.Required, new DaySpan(CaseReading.Earliest, reading.Today));
        Fields? answers = fields.Map("answers", Need.Optional);
        fields.Done();
        return new Screening(date, answers is null ? Screening.NotDone.Answers : Answers(answers, reading));
    }

    private static ImmutableSortedDictionary<string, ScreeningAnswer> Answers(Fields fields, CaseReading reading)
    {
        var answers = ImmutableSortedDictionary.CreateBuilder<string, ScreeningAnswer>(StringComparer.Ordinal);
        foreach (string id in fields.Keys().Select(key => key.Text))
        {
            if (reading.Library.Screening.FirstOrDefault(item => item.Id == id) is not { } item)
            {
                fields.RefuseId(id, "screening item", reading.Library.Screening.Select(each => each.Id));
            }
            else if (One(fields, item, reading) is ScreeningAnswer answer)
            {
                answers[id] = answer;
            }
        }

        return answers.ToImmutable();
    }

    private static ScreeningAnswer? One(Fields answers, ScreeningItem item, CaseReading reading)
    {
        if (answers.Node(item.Id, Need.Required) is not YamlMap)
        {
            return answers.OneOf<Answer>(item.Id, Need.Optional) is Answer word ? new ScreeningAnswer(item.Id, word, null) : null;
        }

        Fields fields = answers.Map(item.Id, Need.Required)!;
        Answer? answer = fields.OneOf<Answer>("answer", Need.Required);
        Clearance? clearance = fields.Map("clearance", Need.Optional) is Fields given ? ReadClearance(given, reading) : null;
        fields.Done();
        if (fields.Has("clearance") && (!item.CanBeCleared || answer == Answer.No))
        {
            string wrong = item.CanBeCleared ? "There is nothing to clear where the answer is no." : "No clearance lifts this item.";
            fields.Refuse("clearance", wrong, "no clearance here", "a clearance");
        }

        return answer is Answer known ? new ScreeningAnswer(item.Id, known, clearance) : null;
    }

    private static Clearance? ReadClearance(Fields fields, CaseReading reading)
    {
        string? by = fields.Text("by", Need.Required);
        DateOnly? on = fields.Date("on", Need.Required, new DaySpan(CaseReading.Earliest, reading.Today));
        string? text = fields.Text("text", Need.Required, 300);
        fields.Done();
        return by is not null && on is DateOnly day && text is not null ? new Clearance(by, day, text) : null;
    }
}
