using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Assess;

/// <summary>What the form tells while it is typed: the last values with their days, what is computed, and how far each value has changed.</summary>
internal sealed class AssessLive
{
    private const int LastWidth = 14;

    private readonly AssessState _state;
    private readonly AssessReading _reading;
    private readonly ImmutableArray<KneeState> _earlier;
    private readonly KneeState _now;

    public AssessLive(AssessState state)
    {
        (_state, _reading) = (state, new AssessReading(state));
        Assessment visit = _reading.Visit();
        _now = KneeState.At(visit, state.Patient);
        _earlier = state.IsPreOp ? [] : [.. AssessVisits.Before(AssessVisits.Without(state), visit.Date).Select(earlier => KneeState.At(earlier, state.Patient))];
    }

    /// <summary>What stands beside a line, in a number of columns.</summary>
    public FormBeside Beside(FormLine line, int width)
    {
        string? shown = Shown(line);
        string detail = Differs(line) ? "*" : " ";
        (string text, Ink ink) = line.IsShownOnly && shown is null ? (WhyUnknown(line.Id), Ink.Quiet) : ChangeText(line);
        return line.Id switch
        {
            AssessLines.Date => new(PictureRow.Of(_reading.Day is { } day ? DayWords.Place(_state.Desk.Case.Operation.Date, day) : "", Ink.Quiet)),
            AssessLines.Rater => FormBeside.Nothing,
            _ => new(new PictureRow([new(detail + TextFit.Exactly(Last(line), LastWidth - 1), Ink.Quiet), new(TextFit.Exactly(text, Math.Max(0, width - LastWidth)).TrimEnd(), ink)]), shown),
        };
    }

    /// <summary>What the foot tells of a line.</summary>
    public IEnumerable<string> Foot(FormLine line)
    {
        yield return _reading.Allowed(line);
        if (AssessLines.IsExtension(line.Id))
        {
            yield return AssessLines.Convention(_state.Sign);
        }

        string detail = IsMeasure(line) ? _reading.DetailOf(line.Id).ToString() : "";
        if (detail.Length > 0)
        {
            yield return Differs(line) ? $"Taken with {detail}; last time with {Or(_reading.LastDetail(line.Id)?.ToString(), "nothing stated")}." : $"Taken with {detail}.";
        }

        if (_reading.IsTakenOut(line))
        {
            yield return $"Kept as {line.Given}; empty takes it out as not {(AssessLines.IsSign(line) ? "asked" : "measured")}, with a reason.";
        }

        if (IsMeasure(line) && AssessVisits.Entry(_state, line.Id)!.Converted(line.Text) is { } taken)
        {
            yield return taken;
        }

        if (Trials(line) is { Length: > 1 } trials)
        {
            yield return $"{trials.Length} trials, mean {Write(line.Id, trials.Average())}.";
        }

        if (Change(line) is { } change)
        {
            yield return $"Since {DayWords.Short(change.From)}: {change.Words}, {Write(line.Id, change.Old)} to {Write(line.Id, change.New)}. {string.Join("; ", change.Notes)}".TrimEnd();
        }
    }

    private string? Shown(FormLine line) => line.IsShownOnly || line.Id is MeasureIds.QuadricepsTorque or MeasureIds.OtherTorque
        ? _now.Value(line.Id) is double value ? $"= {Number.Text(value, line.Id == MeasureIds.TorquePerMass ? 2 : 1)}" : null
        : null;

    private (string, Ink) ChangeText(FormLine line) => Change(line) is { } change
        ? ($"{change.Mark} {change.Words}", change.Class == ChangeClass.Worse || change.PossiblyWorse ? Ink.Warning : change.Class == ChangeClass.Improved ? Ink.Milestone : Ink.Plain)
        : ("", Ink.Plain);

    // Active flexion is read as passive where active was not measured: the line of the one that was typed tells the change. A lever arm does not recover.
    private Change? Change(FormLine line) => !AssessLines.IsSign(line) && line.Id != MeasureIds.LeverArm && _now.Value(line.Id) is not null && (line.Text.Length > 0 || Shown(line) is not null)
        ? _state.Desk.ChangeOf(_earlier.Add(_now), line.Id)
        : null;

    private string Last(FormLine line)
    {
        if (AssessLines.IsSign(line))
        {
            return _earlier.LastOrDefault(state => state.Assessment.SignsSeen.ContainsKey(line.Id)) is { } asked
                ? $"{YesNo.Word(asked.Assessment.SignsSeen[line.Id])}, {DayWords.Short(asked.Date)}"
                : "";
        }

        if (_earlier.LastOrDefault(state => state.OwnValue(line.Id) is not null) is { } last)
        {
            return $"{Write(line.Id, last.OwnValue(line.Id)!.Value)}, {DayWords.Short(last.Date)}";
        }

        return !_state.IsPreOp && _state.Desk.Case.PreOp is { } before && KneeState.At(before, _state.Patient).OwnValue(line.Id) is double value ? $"{Write(line.Id, value)}, pre-op" : "";
    }

    private string Write(string id, double value) => AssessVisits.Entry(_state, id)!.Write(Math.Round(value, 1));

    private ImmutableArray<double>? Trials(FormLine line) => IsMeasure(line) && line.Text.Length > 0 ? _reading.Trials(line).Value?.Value : null;

    private bool Differs(FormLine line) => IsMeasure(line) && line.Text.Length > 0 && _reading.LastDetail(line.Id) is { } last && last != _reading.DetailOf(line.Id);

    private static bool IsMeasure(FormLine line) => !line.IsShownOnly && !AssessLines.IsSign(line) && line.Id is not (AssessLines.Date or AssessLines.Rater);

    private string WhyUnknown(string id) => id switch
    {
        MeasureIds.Lag => "needs both extensions",
        MeasureIds.Index when _state.Desk.Case.OtherKnee != OtherKnee.Sound => "other knee not sound",
        MeasureIds.PreOpShare when _state.Desk.Case.PreOp is null => "no pre-op strength",
        MeasureIds.TorquePerMass when _state.Desk.Case.BodyMass is null => "no body mass",
        _ => "needs strength",
    };

    private static string Or(string? words, string otherwise) => string.IsNullOrEmpty(words) ? otherwise : words;
}
