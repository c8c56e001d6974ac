using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Storage.Records;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;

namespace Slowglow.Storage.Mappings;

internal sealed class KeptPaperMapping : IEntityTypeConfiguration<KeptPaper>
{
    public void Configure(EntityTypeBuilder<KeptPaper> builder)
    {
        builder.ToTable("papers");
        builder.HasKey(p => new { p.Kind, p.Number });
        builder.Property(p => p.Kind).HasConversion<string>().HasMaxLength(20);
        builder.Property(p => p.Number).ValueGeneratedNever();
        builder.HasOne<Job>().WithMany().HasForeignKey(p => p.JobNumber).OnDelete(DeleteBehavior.Restrict);
        builder
            .Property(p => p.Paper)
            .HasColumnName("data")
            .HasConversion(JsonText.Converter<Paper>(), JsonText.Comparer<Paper>());
        builder.HasIndex(p => p.Day);
    }
}
