using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads red-flags.yaml: every flag of <see cref="FlagIds"/>, and a clinic's own. A sign that two flags ask has one wording.</summary>
internal static partial class RedFlagReader
{
    private const int LongestLine = 200;

    public static ImmutableArray<RedFlag> Read(LibraryEntries entries)
    {
        entries.Require(FlagIds.Needed);
        Dictionary<string, string> texts = new(Signs.Questions, StringComparer.Ordinal);
        return [.. entries.All.Select(entry => One(entry, texts)).OfType<RedFlag>()];
    }

    private static RedFlag? One(LibraryEntry entry, Dictionary<string, string> texts)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required, 100);
        ImmutableArray<FlagQuestion> questions = [.. Questions(fields, "questions", texts), .. Questions(fields, "background", texts).Select(one => one with { Raises = false })];
        questions = WithNumbers(fields, Covered(fields, questions, texts));
        RedFlag flag = new()
        {
            Id = entry.Id,
            Title = title ?? "",
            Questions = questions,
            Checklist = [.. Checklist(fields), RedFlag.ProtocolLine],
            Score = Score(fields),
            Source = fields.Source(),
        };
        fields.Done();
        if (fields.Problems.Count == before && !flag.Raising.Any() && !FlagIds.Computed.Contains(entry.Id))
        {
            fields.Refuse("questions", "Nothing can raise this flag.", "at least one question, or covers_all", "");
        }

        return fields.Problems.Count == before ? flag : null;
    }

    private static IEnumerable<FlagQuestion> Questions(Fields fields, string key, Dictionary<string, string> texts)
    {
        if (fields.Map(key, Need.Optional) is not Fields asked)
        {
            yield break;
        }

        foreach (string id in asked.Keys().Select(id => id.Text))
        {
            string? text = asked.Text(id, Need.Required, 160);
            if (!Id().IsMatch(id))
            {
                asked.Refuse(id, "This id is not allowed.", "2 to 40 lower-case letters, digits or \"_\", a letter first", id);
            }
            else if (text is not null && !texts.TryAdd(id, text) && texts[id] != text)
            {
                asked.Refuse(id, "The same sign is asked elsewhere in other words.", texts[id], text);
            }
            else if (text is not null)
            {
                yield return new FlagQuestion(id, text, null);
            }
        }
    }

    /// <summary>The questions with the one that covers all in front.</summary>
    private static ImmutableArray<FlagQuestion> Covered(Fields fields, ImmutableArray<FlagQuestion> questions, Dictionary<string, string> texts)
    {
        if (fields.Text("covers_all", Need.Optional, 40) is not string id)
        {
            return questions;
        }

        if (!texts.TryGetValue(id, out string? text))
        {
            fields.Refuse("covers_all", "There is no such question.", "the id of a question of this flag or of a sign of the program", id);
            return questions;
        }

        return [new FlagQuestion(id, text, null) { CoversAll = true }, .. questions.Where(one => one.Id != id)];
    }

    private static ImmutableArray<FlagQuestion> WithNumbers(Fields fields, ImmutableArray<FlagQuestion> questions)
    {
        NumberRange days = new(0, 365, "d");
        Dictionary<string, double> from = Numbers(fields, "from_day", days, questions);
        Dictionary<string, double> until = Numbers(fields, "true_until_day", days, questions);
        Dictionary<string, double> points = Numbers(fields, "points", new NumberRange(-10, 10, "1"), questions);
        return
        [
            .. questions.Select(one => one with
            {
                FromDay = from.TryGetValue(one.Id, out double first) ? (int)first : null,
                TrueUntilDay = until.TryGetValue(one.Id, out double last) ? (int)last : null,
                Points = points.TryGetValue(one.Id, out double worth) ? worth : null,
            }),
        ];
    }

    private static Dictionary<string, double> Numbers(Fields fields, string key, NumberRange range, ImmutableArray<FlagQuestion> questions)
    {
        Dictionary<string, double> numbers = new(StringComparer.Ordinal);
        if (fields.Map(key, Need.Optional) is Fields given)
        {
            foreach (string id in given.Keys().Select(id => id.Text))
            {
                if (questions.All(one => one.Id != id))
                {
                    given.RefuseId(id, "question", questions.Select(one => one.Id));
                }
                else if ((range.Unit == "d" ? given.Whole(id, Need.Required, range) : given.Decimal(id, Need.Required, range)) is double number)
                {
                    numbers[id] = number;
                }
            }
        }

        return numbers;
    }

    private static FlagScore? Score(Fields fields)
    {
        string? title = fields.Text("score", Need.Optional);
        double? from = fields.Decimal("likely_from", title is null ? Need.Optional : Need.Required, new NumberRange(0, 50, "1"));
        return title is null || from is null ? null : new FlagScore(title, from.Value);
    }

    private static IEnumerable<string> Checklist(Fields fields)
    {
        foreach (ListItem item in fields.Items("checklist", Need.Required))
        {
            if (item.Node is YamlScalar { IsBlank: false } line && line.Text.Trim() is { Length: <= LongestLine } text && !text.Contains('\n', StringComparison.Ordinal))
            {
                yield return text;
            }
            else
            {
                fields.Problems.Add(item.Node.Line, new Problem(item.Path, "The text does not fit.", $"one line of 1 to {LongestLine} characters", (item.Node as YamlScalar)?.Text ?? item.Node.Kind));
            }
        }
    }

    [GeneratedRegex(@"^[a-z][a-z0-9_]{1,39}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Id();
}
