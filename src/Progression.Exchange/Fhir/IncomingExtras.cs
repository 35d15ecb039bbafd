using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>What comes in beside readings: answers of visits, body mass, date of birth. Each is taken where the case has none, and refused where it has another.</summary>
/// <param name="ground">The case as it stands, and the day.</param>
/// <param name="entered">The case with the readings.</param>
internal sealed class IncomingExtras(ImportGround ground, Case entered)
{
    private readonly List<ImportLine> _lines = [];
    private readonly List<ImportProblem> _problems = [];

    /// <summary>The case with all of it; without meaning when there are problems.</summary>
    public Case Case { get; private set; } = entered;

    /// <summary>What was found and is good.</summary>
    public IEnumerable<ImportLine> Lines => _lines;

    /// <summary>What is refused.</summary>
    public IEnumerable<ImportProblem> Problems => _problems;

    /// <summary>Adds answers of visits.</summary>
    public void Add(IEnumerable<FoundAnswer> answers)
    {
        foreach (FoundAnswer found in answers)
        {
            bool before = found.Day < ground.Patient.Operation.Date || found.Day == Case.PreOp?.Date;
            Assessment? visit = before ? Case.PreOp : Case.AssessmentOf(found.Day);
            if (before && visit is not null && visit.Date != found.Day)
            {
                _problems.Add(new ImportProblem(found.Place, "A case has one visit before the operation.", $"answers of {visit.Date:yyyy-MM-dd}, or since the operation", $"{found.Day:yyyy-MM-dd}"));
                continue;
            }

            if (Fate(found.Place, (visit?.SignsSeen.TryGetValue(found.Sign, out Answer was) == true ? was : null, found.Answer), Word) is not { } fate)
            {
                continue;
            }

            _lines.Add(new ImportLine(found.Place, $"{found.Day:yyyy-MM-dd}, answers", Question(found.Sign), Word(found.Answer), fate));
            visit ??= new Assessment(found.Day, None<Reading>(), None<Answer>()) { Rater = found.Rater };
            Put(visit with { SignsSeen = visit.SignsSeen.SetItem(found.Sign, found.Answer) }, before);
        }
    }

    /// <summary>Adds body masses.</summary>
    public void Add(IEnumerable<(ImportPlace Place, Mass Mass)> masses)
    {
        foreach ((ImportPlace place, Mass mass) in masses)
        {
            Take(place, "Body mass", (Case.BodyMass, mass), Case with { BodyMass = mass });
        }
    }

    /// <summary>Adds a date of birth.</summary>
    public void Add((IncomingEntry From, DateOnly Day)? born)
    {
        if (born is { } found)
        {
            _lines.Add(new ImportLine(found.From.At("birthDate"), "the person", "Date of birth", $"{found.Day:yyyy-MM-dd}", ImportFate.ComesIn));
            Case = Case with { Born = found.Day };
        }
    }

    private void Take<T>(ImportPlace place, string what, (T? Was, T Is) value, Case taken)
        where T : class
    {
        if (value.Was is { } was && !was.Equals(value.Is))
        {
            _problems.Add(new ImportProblem(place, "The case has another value.", was.ToString()!, value.Is.ToString()!));
            return;
        }

        _lines.Add(new ImportLine(place, "the person", what, value.Is.ToString()!, value.Was is null ? ImportFate.ComesIn : ImportFate.IsThere));
        Case = taken;
    }

    private ImportFate? Fate(ImportPlace place, (Answer? Was, Answer Is) answer, Func<Answer, string> word)
    {
        if (answer.Was is not Answer was)
        {
            return ImportFate.ComesIn;
        }

        if (was == answer.Is)
        {
            return ImportFate.IsThere;
        }

        _problems.Add(new ImportProblem(place, "The visit has another answer.", word(was), word(answer.Is)));
        return null;
    }

    private void Put(Assessment visit, bool before) => Case = before ? Case with { PreOp = visit }
        : Case.Assessments.Any(one => one.Date == visit.Date) ? Case with { Assessments = [.. Case.Assessments.Select(one => one.Date == visit.Date ? visit : one)] }
        : Case.With(visit);

    // Its id reads as words and is short; the question itself would fill the line.
    private static string Question(string sign) => sign.Replace('_', ' ');

    private static string Word(Answer answer) => answer switch { Answer.Yes => "yes", Answer.No => "no", _ => "unknown" };

    private static System.Collections.Immutable.ImmutableSortedDictionary<string, T> None<T>() => System.Collections.Immutable.ImmutableSortedDictionary.Create<string, T>(StringComparer.Ordinal);
}
