using System.Collections.Immutable;
using System.Globalization;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>Whose data a bundle holds. Nothing of another person comes in; where the bundle does not say the code of the case, that is asked back.</summary>
internal sealed class IncomingPeople
{
    private const string Patient = "Patient";

    private readonly ImportGround _ground;
    private readonly Dictionary<string, IncomingEntry> _named = new(StringComparer.Ordinal);
    private readonly List<ImportProblem> _problems = [];
    private readonly HashSet<IncomingEntry> _others = [];

    public IncomingPeople(ImportGround ground, ImmutableArray<IncomingEntry> entries)
    {
        _ground = ground;
        foreach ((string name, IncomingEntry entry) in entries.SelectMany(entry => entry.Names.Select(name => (name, entry))))
        {
            _named.TryAdd(name, entry);
        }

        ImmutableArray<IncomingEntry> people = [.. entries.Where(entry => entry.Type == Patient)];
        foreach (IncomingEntry person in people)
        {
            Judge(person);
        }

        ImmutableArray<IncomingEntry> unnamed = [.. people.Where(person => !_others.Contains(person) && Codes(person).IsEmpty)];
        foreach (IncomingEntry more in unnamed.Skip(people.Any(person => !Codes(person).IsEmpty) ? 0 : 1))
        {
            _others.Add(more);
            _problems.Add(new ImportProblem(more.At(), "The bundle is of more than one person.", $"one person, {ground.Patient.Code}", Said(more)));
        }

        Query = unnamed.Where(person => !_others.Contains(person)).Select(person => new ImportProblem(
            person.At("identifier"), "The bundle does not say the code of the case. Please check that it is the same person.", $"{FhirSystems.Case}, {ground.Patient.Code}", Said(person))).FirstOrDefault();
    }

    /// <summary>What is wrong with the people of the bundle.</summary>
    public IEnumerable<ImportProblem> Problems => _problems;

    /// <summary>What is asked back where the bundle's person has no code of ours; null when nothing is.</summary>
    public ImportProblem? Query { get; }

    /// <summary>The date of birth, where the bundle says one and the case has none.</summary>
    public (IncomingEntry From, DateOnly Day)? Born { get; private set; }

    /// <summary>What is wrong with what something is about; null when it is this person.</summary>
    /// <param name="entry">What says it.</param>
    public ImportProblem? WrongSubject(IncomingEntry entry)
    {
        if (entry.Resource.Part("subject") is not { } subject)
        {
            return new ImportProblem(entry.At("subject"), "It is not said whose this is.", "a reference to the person", "");
        }

        if (subject.Part("identifier") is { } identifier && identifier.Text("system") == FhirSystems.Case)
        {
            return _ground.OtherPerson(entry.At("subject.identifier"), identifier.Text("value") ?? "");
        }

        string reference = subject.Text("reference") ?? "";
        IncomingEntry? meant = _named.GetValueOrDefault(reference);
        string? wrong = meant is null ? "The reference leads to no entry of the bundle."
            : meant.Type != Patient ? $"The reference leads to a {meant.Type}, not to a person."
            : _others.Contains(meant) ? "This is of another person."
            : null;
        return wrong is null ? null : new ImportProblem(entry.At("subject.reference"), wrong, "the name of the entry with the person", reference);
    }

    private void Judge(IncomingEntry person)
    {
        if (Codes(person).Select(code => _ground.OtherPerson(person.At("identifier"), code)).FirstOrDefault(problem => problem is not null) is { } other)
        {
            _others.Add(person);
            _problems.Add(other);
            return;
        }

        if (person.Resource.Text("birthDate") is not { } text)
        {
            return;
        }

        // A year or a month alone is a date of birth too; it only can agree or not.
        bool whole = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day);
        if (_ground.Patient.Born is DateOnly born && !born.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture).StartsWith(text, StringComparison.Ordinal))
        {
            _others.Add(person);
            _problems.Add(new ImportProblem(person.At("birthDate"), "This person was born on another day.", "the date of birth of the case, or none", text));
        }
        else if (whole && _ground.Patient.Born is null && day.Year > 1900 && day < _ground.Patient.Operation.Date)
        {
            Born = (person, day);
        }
    }

    private static ImmutableArray<string> Codes(IncomingEntry person) =>
        [.. person.Resource.Parts("identifier").Where(one => one.Text("system") == FhirSystems.Case).Select(one => one.Text("value") ?? "")];

    private static string Said(IncomingEntry person) =>
        string.Join(", ", person.Resource.Parts("identifier").Select(one => one.Text("value")).OfType<string>().DefaultIfEmpty("no identifier").Take(3));
}
