using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage.Mappings;

internal sealed class JobMapping : IEntityTypeConfiguration<Job>
{
    public void Configure(EntityTypeBuilder<Job> builder)
    {
        builder.ToTable("jobs");
        builder.HasKey(j => j.Number);
        builder.Property(j => j.Number).ValueGeneratedNever();
        builder.HasOne(j => j.Customer).WithMany().IsRequired().OnDelete(DeleteBehavior.Restrict);
        builder.HasOne(j => j.Sheet).WithMany().OnDelete(DeleteBehavior.Restrict);
        builder.HasMany(j => j.Timeline).WithOne().HasForeignKey(e => e.JobNumber).OnDelete(DeleteBehavior.Restrict);
        builder.ComplexProperty(
            j => j.Unit,
            unit =>
            {
                unit.Property(u => u.Maker).HasColumnName("maker");
                unit.Property(u => u.Model).HasColumnName("model");
                unit.Property(u => u.Serial).HasColumnName("serial");
                unit.Property(u => u.MainsVolts).HasColumnName("mains_volts");
            }
        );
        builder.OwnsOne(
            j => j.Limit,
            limit =>
            {
                limit.Property(m => m.Figure).HasColumnName("limit_figure").HasPrecision(18, 4);
                limit.Property(m => m.Currency).HasColumnName("limit_currency").HasMaxLength(3);
            }
        );
    }
}
