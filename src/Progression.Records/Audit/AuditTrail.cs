using Progression.Core.Clinic;
using Progression.Records.Storage;

namespace Progression.Records.Audit;

/// <summary>Writes down what one person does with the records of a store.</summary>
/// <param name="store">Where the records are.</param>
/// <param name="person">Who works.</param>
/// <param name="clock">The clock that dates what is written.</param>
public sealed class AuditTrail(IPlanStore store, ClinicPerson person, TimeProvider clock)
{
    /// <summary>Adds an entry.</summary>
    /// <returns>Null; or why it could not be written, as a sentence. What was to be done may go on where it only reads: a full disk must not hide a case.</returns>
    public string? Note(AuditNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        AppendResult result = store.Append(new Submission(
            AuditChain.Code, [new Draft(RecordKind.Audit, null, AuditNoteJson.Write(note))], new Actor(person.UserId, person.Name), clock.GetUtcNow()));
        return result is AppendResult.Saved ? null : $"This could not be written to the audit: {Why(result)}";
    }

    /// <summary>Why the person may not do something, which is written down as refused; null when they may.</summary>
    /// <param name="act">What is asked for.</param>
    /// <param name="caseCode">With which case; null for the store as a whole.</param>
    public string? Refusal(ClinicAct act, string? caseCode)
    {
        string? why = Permission.WhyNot(person, act);
        return why is null ? null : Refused(why, Permission.Words(act), caseCode);
    }

    /// <summary>Writes down that something was refused for another reason than the person's roles.</summary>
    /// <param name="why">The sentence for the person.</param>
    /// <param name="what">What was asked for, as a verb and its object.</param>
    /// <param name="caseCode">With which case; null for the store as a whole.</param>
    /// <returns>The sentence, with what became of the entry where it could not be written.</returns>
    public string Refused(string why, string what, string? caseCode) =>
        Note(new AuditNote(AuditAct.Refused, caseCode, What: what)) is { } unwritten ? $"{why} {unwritten}" : why;

    private static string Why(AppendResult result) => result switch
    {
        AppendResult.Busy => "the store is in use.",
        AppendResult.NoSpace => "there is too little room on the disk.",
        AppendResult.Corrupt => "the records are damaged.",
        AppendResult.Refused refused => refused.Why,
        _ => "somebody else wrote at the same time.",
    };
}
