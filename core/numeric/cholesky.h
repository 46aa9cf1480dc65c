#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Small dense symmetric positive definite systems (GSL): covariances of a few dozen numbers.
namespace core::numeric {

/// A square matrix, row by row. Plain storage; the arithmetic is in Cholesky.
class SquareMatrix {
  public:
    SquareMatrix() = default;
    explicit SquareMatrix(std::size_t size) : size_(size), values_(size * size, 0.0) {}
    [[nodiscard]] std::size_t size() const { return size_; }
    double& operator()(std::size_t i, std::size_t j) { return values_[i * size_ + j]; }
    double operator()(std::size_t i, std::size_t j) const { return values_[i * size_ + j]; }
    [[nodiscard]] std::span<double> values() { return values_; }
    [[nodiscard]] std::span<const double> values() const { return values_; }

  private:
    std::size_t size_ = 0;
    std::vector<double> values_;
};

/// The factor L of A = L L'. Made once, used for many right-hand sides.
class Cholesky {
  public:
    Cholesky() = default;
    /// Absent where A is not positive definite to working precision. Only the lower triangle of
    /// `a` is read.
    static std::optional<Cholesky> of(SquareMatrix a);
    [[nodiscard]] std::size_t size() const { return lower_.size(); }
    /// b becomes L^-1 b. `b` has size() values; so below.
    void forward(std::span<double> b) const;
    /// b becomes L'^-1 b.
    void backward(std::span<double> b) const;
    /// b becomes A^-1 b.
    void solve(std::span<double> b) const;
    [[nodiscard]] SquareMatrix inverse() const;
    /// ln det A.
    [[nodiscard]] double log_determinant() const;

  private:
    SquareMatrix lower_;
};

} // namespace core::numeric
